// One runner for every test program; Catch2 2.13 compiles its own part here, once.
#define CATCH_CONFIG_MAIN
#include <catch2/catch.hpp>
