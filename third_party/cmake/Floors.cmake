# The floors of src/: each folder is a static library with an include door of its own, build/doors/<folder>, that holds
# one link to the folder. Linking a library is what opens its door, so an include that the plan does not allow fails to
# compile, and a folder can only lean on one that was declared before it, so no cycle can be written.

# Read once for all sources. A file still includes what it uses: .ci/tidy reads each without them.
set(WW_PRECOMPILED <algorithm> <array> <cmath> <functional> <map> <optional> <span> <string> <string_view> <variant>
  <vector> <fmt/format.h> <tl/expected.hpp>)

# ww_library(<folder> [BELOW <folder>...] [USES <target>...] [PRIVATELY <target>...] [PRECOMPILED <header>...])
# BELOW: folders it may include. USES: libraries its headers show. PRIVATELY: libraries only its .cpp files see.
# PRECOMPILED: large headers of those that are worth reading once as well.
function(ww_library name)
  cmake_parse_arguments(W "" "" "BELOW;USES;PRIVATELY;PRECOMPILED" ${ARGN})
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/src/${name}/*.cpp ${CMAKE_SOURCE_DIR}/src/${name}/*/*.cpp)
  add_library(ww_${name} STATIC ${sources})
  ww_open_door(ww_${name} ${name})
  target_link_libraries(ww_${name} PUBLIC ${W_USES} PRIVATE ${W_PRIVATELY})
  ww_lean_on(ww_${name} ${W_BELOW})
  if(W_PRECOMPILED OR name STREQUAL base)
    target_precompile_headers(ww_${name} PRIVATE ${WW_PRECOMPILED} ${W_PRECOMPILED})
  else()
    target_precompile_headers(ww_${name} REUSE_FROM ww_base)
  endif()
endfunction()

# ww_program(<program> <folder> [BELOW <folder>...] [USES <target>...]): the folder becomes a library, so that tests can
# link it, and its main.cpp becomes the program.
function(ww_program program name)
  ww_library(${name} ${ARGN})
  get_target_property(sources ww_${name} SOURCES)
  list(FILTER sources EXCLUDE REGEX "/main\\.cpp$")
  set_target_properties(ww_${name} PROPERTIES SOURCES "${sources}")
  add_executable(${program} ${CMAKE_SOURCE_DIR}/src/${name}/main.cpp)
  target_link_libraries(${program} PRIVATE ww_${name})
endfunction()

function(ww_open_door target name)
  set(door ${CMAKE_BINARY_DIR}/doors/${name})
  file(MAKE_DIRECTORY ${door})
  file(CREATE_LINK ${CMAKE_SOURCE_DIR}/src/${name} ${door}/${name} SYMBOLIC)
  target_include_directories(${target} PUBLIC ${door})
endfunction()

function(ww_lean_on target)
  foreach(below ${ARGN})
    if(NOT TARGET ww_${below})
      message(FATAL_ERROR "${target} leans on ${below}, which is not below it: declare the floors bottom up")
    endif()
    target_link_libraries(${target} PUBLIC ww_${below})
  endforeach()
endfunction()
