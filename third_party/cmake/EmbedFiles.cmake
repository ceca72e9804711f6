# ww_embed(<target> NAME <name> FILES <glob>...): compiles the files into the target, so that the program needs no data
# folder at run time. Gives `std::span<const EmbeddedFile> embedded_<name>()` in namespace wallwright::embedded, with the
# header "embedded/<name>.h" that only the target sees.
function(ww_embed target)
  cmake_parse_arguments(E "" "NAME" "FILES" ${ARGN})
  list(TRANSFORM E_FILES PREPEND ${CMAKE_SOURCE_DIR}/)
  file(GLOB files CONFIGURE_DEPENDS ${E_FILES})
  set(dir ${CMAKE_BINARY_DIR}/embedded)
  set(entries "")
  foreach(file ${files})
    set_property(DIRECTORY ${CMAKE_SOURCE_DIR} APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${file})
    file(READ ${file} text)
    get_filename_component(base ${file} NAME)
    string(APPEND entries "    EmbeddedFile{\"${base}\", R\"embedded(${text})embedded\"},\n")
  endforeach()
  file(CONFIGURE OUTPUT ${dir}/embedded/${E_NAME}.h @ONLY CONTENT [=[
#pragma once
#include <span>
#include <string_view>
namespace wallwright::embedded {
struct EmbeddedFile {
    std::string_view name;
    std::string_view text;
};
std::span<const EmbeddedFile> embedded_@E_NAME@();
}  // namespace wallwright::embedded
]=])
  file(CONFIGURE OUTPUT ${dir}/embedded_${E_NAME}.cpp @ONLY CONTENT [=[
#include "embedded/@E_NAME@.h"
namespace wallwright::embedded {
namespace {
constexpr EmbeddedFile kFiles[] = {
@entries@};
}
std::span<const EmbeddedFile> embedded_@E_NAME@() { return kFiles; }
}  // namespace wallwright::embedded
]=])
  target_sources(${target} PRIVATE ${dir}/embedded_${E_NAME}.cpp)
  target_include_directories(${target} PRIVATE ${dir})
endfunction()
