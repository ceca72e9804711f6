// Each folder of tests/cli/cases is one run of the real program: `words` holds its command line,
// `out`, `err` and `code` what it must print and end with, and every other file is put beside it. A
// file `after/NAME` must be what the run leaves as NAME. To accept a change: WW_ACCEPT=1 and run
// the test, then read the diff.
#include "support/command.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>

using namespace wallwright::test;
namespace fs = std::filesystem;

namespace {

const fs::path kCases = WW_SOURCE "/tests/cli/cases";

bool accepting() {
    return std::getenv("WW_ACCEPT") != nullptr && std::getenv("CI") == nullptr;
}

std::vector<fs::path> all_cases() {
    std::vector<fs::path> cases;
    for (const auto& entry : fs::recursive_directory_iterator(kCases))
        if (entry.is_regular_file() && entry.path().filename() == "words")
            cases.push_back(entry.path().parent_path());
    std::sort(cases.begin(), cases.end());
    return cases;
}

bool is_expectation(const fs::path& file) {
    const std::string name = file.filename().string();
    return name == "words" || name == "out" || name == "err" || name == "code" || name == "after";
}

void lay_out_inputs(const fs::path& from, const std::string& folder) {
    for (const auto& entry : fs::directory_iterator(from))
        if (!is_expectation(entry.path()))
            fs::copy(entry.path(), folder, fs::copy_options::recursive);
}

std::string one_line(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

/// With {demo} standing for the folder of the demo walls.
std::string command_line(const fs::path& folder) {
    std::string words = one_line(read_whole((folder / "words").string()));
    const std::string mark = "{demo}";
    for (std::size_t at = words.find(mark); at != std::string::npos; at = words.find(mark))
        words.replace(at, mark.size(), WW_SOURCE "/assets/demo");
    return words;
}

void compare(const fs::path& golden, const std::string& got) {
    if (accepting())
        return write_whole(golden.string(), got);
    INFO(golden.string());
    REQUIRE(fs::exists(golden));
    CHECK(got == read_whole(golden.string()));
}

void run_case(const fs::path& folder) {
    const ScratchFolder scratch;
    lay_out_inputs(folder, scratch.path());
    const Ran ran =
        run(fmt::format("cd {} && {} {}", scratch.path(), WW_PROGRAM, command_line(folder)));
    compare(folder / "out", ran.out);
    compare(folder / "err", ran.err);
    compare(folder / "code", std::to_string(ran.status) + "\n");
    if (fs::exists(folder / "after"))
        for (const auto& entry : fs::directory_iterator(folder / "after"))
            compare(entry.path(), read_whole(scratch.file(entry.path().filename().string())));
}

}  // namespace

TEST_CASE("Every recorded run of the program prints and leaves what it did") {
    const auto cases = all_cases();
    REQUIRE_FALSE(cases.empty());
    for (const fs::path& folder : cases)
        DYNAMIC_SECTION(fs::relative(folder, kCases).string()) {
            run_case(folder);
        }
}
