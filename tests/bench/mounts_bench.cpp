// How few sheets nesting takes on the public cutting instances: bench_mounts [card|small|all]...
// Prints, and cuts every plan; judges nothing else.
#include "mounts/nest/nest.h"
#include "mounts/nest_cases.h"
#include "mounts/nest_replay.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

using namespace wallwright;

namespace {

using Clock = std::chrono::steady_clock;

struct Totals {
    std::size_t ours = 0;
    std::size_t best = 0;
    std::size_t bound = 0;
    std::size_t proved = 0;
    std::size_t equal = 0;
    std::size_t cases = 0;
    double longest = 0;  // seconds
};

void show(const char* name, const Totals& totals) {
    std::printf(
        "%-10s ours %5zu  best known %5zu  bound %5zu  equal %3zu of %3zu  proved %3zu  "
        "longest %.2f s\n",
        name, totals.ours, totals.best, totals.bound, totals.equal, totals.cases, totals.proved,
        totals.longest);
    std::fflush(stdout);
}

void add(const Totals& more, Totals& to) {
    to.ours += more.ours;
    to.best += more.best;
    to.bound += more.bound;
    to.proved += more.proved;
    to.equal += more.equal;
    to.cases += more.cases;
    to.longest = std::max(to.longest, more.longest);
}

mounts::NestPlan run(const mounts::NestTask& task, std::size_t best, double seconds,
                     Totals& totals) {
    const auto start = Clock::now();
    mounts::NestPlan plan = mounts::nest(task, {.seconds = seconds}, [] { return true; });
    const std::chrono::duration<double> took = Clock::now() - start;
    if (const std::string wrong = tests::replay(task, plan); !wrong.empty())
        std::printf("WRONG: %s\n", wrong.c_str());
    totals.ours += plan.count;
    totals.best += best;
    totals.bound += plan.bound;
    totals.proved += plan.proved ? 1 : 0;
    totals.equal += plan.count <= best ? 1 : 0;
    totals.cases += 1;
    totals.longest = std::max(totals.longest, took.count());
    return plan;
}

void one_by_one(const char* title, const std::vector<tests::NestCase>& cases, bool may_turn,
                double seconds) {
    Totals totals;
    for (const tests::NestCase& one : cases) {
        const std::size_t best = may_turn ? one.best_turned : one.best_fixed;
        const mounts::NestPlan plan =
            run(may_turn ? one.task : tests::without_turning(one.task), best, seconds, totals);
        std::printf("%-14s ours %3zu  best known %3zu  bound %3zu  waste %4.1f %%%s\n",
                    one.name.c_str(), plan.count, best, plan.bound, 100 * plan.waste,
                    plan.count > best ? "  MORE" : "");
    }
    show(title, totals);
}

void by_class(double seconds) {
    Totals totals;
    Totals of_class;
    std::string name;
    for (const tests::NestCase& one : tests::all_cases()) {
        if (const std::string now = one.name.substr(0, 3); now != name) {
            if (!name.empty())
                show(name.c_str(), of_class);
            name = now;
            of_class = {};
        }
        Totals alone;
        run(one.task, one.best_turned, seconds, alone);
        add(alone, of_class);
        add(alone, totals);
    }
    show(name.c_str(), of_class);
    show("all", totals);
}

}  // namespace

int main(int count, char** words) {
    const std::vector<std::string> asked(words + 1, words + count);
    const auto is_asked = [&asked](const char* part) {
        return asked.empty() || std::find(asked.begin(), asked.end(), part) != asked.end();
    };
    if (is_asked("card"))
        one_by_one("card", tests::mount_cases(), true, 1);
    if (is_asked("small")) {
        one_by_one("turned", tests::small_cases(), true, 1);
        one_by_one("fixed", tests::small_cases(), false, 1);
    }
    if (is_asked("all"))
        by_class(0.3);
}
