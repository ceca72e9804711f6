// How well the search arranges, and how fast: bench_arrange [packing|time|scaling]... Prints;
// judges nothing.
#include "bench/arrange_packing.h"
#include "bench/arrange_search.h"

#include <algorithm>
#include <string>
#include <vector>

using namespace wallwright;

int main(int count, char** words) {
    const std::vector<std::string> asked(words + 1, words + count);
    const auto is_asked = [&asked](const char* part) {
        return asked.empty() || std::ranges::find(asked, part) != asked.end();
    };
    if (is_asked("packing")) {
        bench::packings_a_second();
        bench::public_sets(10);
        bench::against_glpk(60);
    }
    if (is_asked("scaling"))
        bench::scaling();
    if (is_asked("time"))
        bench::score_over_time(20, 60);
}
