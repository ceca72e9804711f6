# Dear ImGui comes in Debian as one static library that needs stb, and FreeType for its sharper font builder, which its
# pkg-config file does not name. Gives ImGui::ImGui.
find_package(PkgConfig REQUIRED)
pkg_check_modules(ImGui REQUIRED IMPORTED_TARGET GLOBAL imgui freetype2)
if(NOT TARGET ImGui::ImGui)
  add_library(ImGui::ImGui ALIAS PkgConfig::ImGui)
endif()
include(FindPackageHandleStandardArgs)
find_package_handle_standard_args(ImGui REQUIRED_VARS ImGui_FOUND VERSION_VAR ImGui_imgui_VERSION)
