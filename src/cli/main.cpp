#include "cli/run.h"

#include <iostream>

int main(int argc, char** argv) {
    return wallwright::cli::run(argc, argv, std::cout, std::cerr);
}
