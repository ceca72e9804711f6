# Pango and Cairo ship pkg-config files but no CMake package. Gives PangoCairo::PangoCairo.
find_package(PkgConfig REQUIRED)
pkg_check_modules(PangoCairo REQUIRED IMPORTED_TARGET GLOBAL pangocairo cairo)
if(NOT TARGET PangoCairo::PangoCairo)
  add_library(PangoCairo::PangoCairo ALIAS PkgConfig::PangoCairo)
endif()
include(FindPackageHandleStandardArgs)
find_package_handle_standard_args(PangoCairo REQUIRED_VARS PangoCairo_FOUND VERSION_VAR PangoCairo_cairo_VERSION)
