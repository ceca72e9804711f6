#include "app/options.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iterator>
#include <ostream>
#include <string_view>

namespace wallwright::app {

namespace {

constexpr int kUnusable = 2;

/// "1280x800"; nothing for other text or a side that no window has.
std::optional<WindowSize> parse_size(const std::string& text) {
    constexpr unsigned kMost = 16384;
    const std::size_t middle = text.find('x');
    const auto is_number = [](const std::string& part) {
        return !part.empty() && part.size() <= 5 &&
               part.find_first_not_of("0123456789") == std::string::npos;
    };
    if (middle == std::string::npos || !is_number(text.substr(0, middle)) ||
        !is_number(text.substr(middle + 1)))
        return std::nullopt;
    const WindowSize size{static_cast<unsigned>(std::stoul(text.substr(0, middle))),
                          static_cast<unsigned>(std::stoul(text.substr(middle + 1)))};
    if (size.width == 0 || size.height == 0 || size.width > kMost || size.height > kMost)
        return std::nullopt;
    return size;
}

std::optional<desk::Step> parse_step(const std::string& text) {
    constexpr std::string_view kNames[] = {"room", "pieces", "mounts", "arrange",
                                           "hang"};  // In its order.
    const auto* const found = std::ranges::find(kNames, text);
    if (found == std::end(kNames))
        return std::nullopt;
    return static_cast<desk::Step>(found - std::begin(kNames));
}

/// Of the step hang.
std::optional<desk::HangView> parse_view(const std::string& text) {
    constexpr std::string_view kNames[] = {"wall", "pages", "day"};  // In its order.
    const auto* const found = std::ranges::find(kNames, text);
    if (found == std::end(kNames))
        return std::nullopt;
    return static_cast<desk::HangView>(found - std::begin(kNames));
}

/// X11 knows no scale; these two names are where desktops tell theirs.
float scale_of_display() {
    constexpr float kMost = 4;
    for (const char* name : {"GDK_SCALE", "QT_SCALE_FACTOR"})
        if (const char* value = std::getenv(name))
            if (const float scale = std::strtof(value, nullptr); scale >= 1 && scale <= kMost)
                return scale;
    return 1;
}

/// As typed, until they are read.
struct Words {
    std::string size;
    std::string step;
    std::string view;
};

void define(CLI::App& program, Options& options, Words& words) {
    program.add_option("wall", options.app.file, "The wall's file to open")->type_name("FILE");
    program.add_option("--scale", options.app.text_scale, "Size of the text: 1 is usual")
        ->type_name("FACTOR")
        ->check(CLI::Range(0.75, 2.5).description("0.75 to 2.5"))
        ->check([](const std::string& text) {
            // A range compares, and "nan" is neither too small nor too large.
            return std::isfinite(std::strtod(text.c_str(), nullptr)) ? "" : "it is no number";
        });
    program.add_option("--size", words.size, "Size of the window in pixels, as in 1280x800")
        ->type_name("SIZE")
        ->check([](const std::string& text) {
            return parse_size(text) ? std::string() : "a size is written as in 1280x800";
        });
    program.add_option("--step", words.step, "Start with room, pieces, mounts, arrange or hang")
        ->type_name("STEP")
        ->check([](const std::string& text) {
            return parse_step(text) ? std::string()
                                    : "a step is room, pieces, mounts, arrange or hang";
        });
    program.add_option("--view", words.view, "Start the step hang with wall, pages or day")
        ->type_name("VIEW")
        ->check([](const std::string& text) {
            return parse_view(text) ? std::string() : "a view is wall, pages or day";
        });
    program.add_flag("--dark", options.app.dark, "Light letters on dark ground");
    program.add_option("--shot", options.loop.shot, "Write a picture of the window (.png) and end")
        ->type_name("FILE");
    program.add_flag("--announce", options.loop.announce,
                     "Print \"ready\" when the window can be seen, and a line for each frame");
}

}  // namespace

std::variant<Options, int> parse_options(int argc, const char* const* argv, std::ostream& out,
                                         std::ostream& err) {
    Options options;
    Words words;
    CLI::App program("Plan a wall of framed pictures, on screen.", "wallwright-app");
    program.set_version_flag("--version", std::string("wallwright-app " WW_VERSION));
    define(program, options, words);
    try {
        program.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        if (error.get_exit_code() == 0)
            return program.exit(error, out, err);
        err << "wallwright-app: " << error.what() << "; wallwright-app --help lists the words\n";
        return kUnusable;
    }
    options.loop.size = parse_size(words.size);
    options.app.step = parse_step(words.step);
    options.app.hang_view = parse_view(words.view);
    options.app.display_scale = options.loop.display_scale = scale_of_display();
    return options;
}

}  // namespace wallwright::app
