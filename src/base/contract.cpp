#include "base/contract.h"

#include <cstdio>
#include <cstdlib>

namespace wallwright {

void broken_contract(const char* promise, const char* file, int line) {
    std::fprintf(stderr,
                 "wallwright stopped: %s (%s:%d). This is a bug; your files are as they were.\n",
                 promise, file, line);
    std::abort();
}

}  // namespace wallwright
