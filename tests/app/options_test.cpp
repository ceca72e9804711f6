#include "app/options.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <sstream>
#include <vector>

using namespace wallwright;
using namespace wallwright::app;

namespace {

struct Parsed {
    std::variant<Options, int> result;
    std::string out;
    std::string err;
};

Parsed parse(std::vector<const char*> words) {
    words.insert(words.begin(), "wallwright-app");
    std::ostringstream out;
    std::ostringstream err;
    auto result = parse_options(static_cast<int>(words.size()), words.data(), out, err);
    return {std::move(result), out.str(), err.str()};
}

}  // namespace

TEST_CASE("All words of the program are understood") {
    const Parsed parsed =
        parse({"wall.json", "--scale", "1.5", "--size", "1920x1080", "--step", "hang", "--view",
               "pages", "--dark", "--shot", "a.png", "--announce"});
    REQUIRE(std::holds_alternative<Options>(parsed.result));
    const auto& options = std::get<Options>(parsed.result);
    CHECK(options.app.file == "wall.json");
    CHECK(options.app.text_scale == 1.5F);
    CHECK(options.app.step == desk::Step::hang);
    CHECK(options.app.hang_view == desk::HangView::pages);
    CHECK(options.app.dark);
    REQUIRE(options.loop.size.has_value());
    CHECK(options.loop.size->width == 1920);
    CHECK(options.loop.size->height == 1080);
    CHECK(options.loop.shot == "a.png");
    CHECK(options.loop.announce);
}

TEST_CASE("Without words nothing is asked for") {
    const Parsed parsed = parse({});
    REQUIRE(std::holds_alternative<Options>(parsed.result));
    const auto& options = std::get<Options>(parsed.result);
    CHECK(options.app.file.empty());
    CHECK_FALSE(options.app.text_scale.has_value());
    CHECK_FALSE(options.app.step.has_value());
    CHECK_FALSE(options.app.hang_view.has_value());
    CHECK_FALSE(options.loop.size.has_value());
    CHECK(options.loop.shot.empty());
}

TEST_CASE("A word that cannot be used is told in one line, with status 2") {
    const auto words = GENERATE(
        std::vector<const char*>{"--size", "large"}, std::vector<const char*>{"--size", "0x800"},
        std::vector<const char*>{"--size", "12800000x8"}, std::vector<const char*>{"--scale", "9"},
        std::vector<const char*>{"--scale", "nan"}, std::vector<const char*>{"--step", "paint"},
        std::vector<const char*>{"--view", "moon"}, std::vector<const char*>{"--colour"},
        std::vector<const char*>{"a.json", "b.json"});
    const Parsed parsed = parse(words);
    REQUIRE(std::holds_alternative<int>(parsed.result));
    CHECK(std::get<int>(parsed.result) == 2);
    CHECK(parsed.out.empty());
    CHECK(std::count(parsed.err.begin(), parsed.err.end(), '\n') == 1);
}

TEST_CASE("The help calls each word's kind by a name of its own") {
    const Parsed parsed = parse({"--help"});
    REQUIRE(std::holds_alternative<int>(parsed.result));
    CHECK(std::get<int>(parsed.result) == 0);
    CHECK(parsed.out.find("--step STEP") != std::string::npos);
    CHECK(parsed.out.find("ENUM") == std::string::npos);
    CHECK(parsed.out.find("->") == std::string::npos);
}

TEST_CASE("Each step of the job can be started with") {
    const auto [word, step] =
        GENERATE(std::pair{"room", desk::Step::room}, std::pair{"pieces", desk::Step::pieces},
                 std::pair{"mounts", desk::Step::mounts}, std::pair{"arrange", desk::Step::arrange},
                 std::pair{"hang", desk::Step::hang});
    const Parsed parsed = parse({"--step", word});
    REQUIRE(std::holds_alternative<Options>(parsed.result));
    CHECK(std::get<Options>(parsed.result).app.step == step);
}

TEST_CASE("Each view of hanging can be started with") {
    const auto [word, view] =
        GENERATE(std::pair{"wall", desk::HangView::wall}, std::pair{"pages", desk::HangView::pages},
                 std::pair{"day", desk::HangView::day});
    const Parsed parsed = parse({"--view", word});
    REQUIRE(std::holds_alternative<Options>(parsed.result));
    CHECK(std::get<Options>(parsed.result).app.hang_view == view);
}

TEST_CASE("The version is told without opening anything") {
    const Parsed parsed = parse({"--version"});
    REQUIRE(std::holds_alternative<int>(parsed.result));
    CHECK(std::get<int>(parsed.result) == 0);
    CHECK(parsed.out.find("wallwright-app ") == 0);
}
