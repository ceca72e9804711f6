#include "draw/labels.h"

#include <algorithm>
#include <cstdint>
#include <sstream>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

constexpr double kCapitalShare = 0.727;  // of the font's size, Inter and DejaVu Sans alike
constexpr double kTails = 0.3;           // of the capitals' height, below the base line

constexpr std::string_view kNarrow = " .,:;'|!()[]/-ijlftrI";
constexpr std::string_view kWide = "mwMW@%";

/// Share of the font's size that one ASCII letter takes.
double share_of(char letter) {
    if (kNarrow.find(letter) != std::string_view::npos)
        return 0.4;
    if (kWide.find(letter) != std::string_view::npos)
        return 0.95;
    return letter >= 'A' && letter <= 'Z' ? 0.74 : 0.65;
}

/// Share of the font's size by the first byte of a letter in UTF-8; following bytes take nothing.
double share_of_byte(char byte) {
    const auto value = static_cast<std::uint8_t>(byte);
    if (value < 0x80)
        return share_of(byte);
    if (value < 0xC0)
        return 0;
    constexpr std::uint8_t kFirstOfThree = 0xE0;
    return value < kFirstOfThree ? 0.75 : 1.05;
}

std::vector<std::string> words_of(const std::string& text) {
    std::vector<std::string> words;
    std::istringstream in(text);
    for (std::string word; in >> word;)
        words.push_back(word);
    return words;
}

/// Without its last letter, all bytes of it.
void drop_letter(std::string& text) {
    const auto follows = [](char byte) {
        return (static_cast<std::uint8_t>(byte) & 0xC0U) == 0x80;
    };
    while (!text.empty() && follows(text.back()))
        text.pop_back();
    if (!text.empty())
        text.pop_back();
}

std::string shortened(std::string text, double size, double width, bool more) {
    if (!more && estimated_width(text, size) <= width)
        return text;
    while (!text.empty() && estimated_width(text + "...", size) > width)
        drop_letter(text);
    return text + "...";
}

}  // namespace

std::vector<std::string> wrapped(const std::string& text, double size, double width,
                                 std::size_t most) {
    std::vector<std::string> lines;
    for (const std::string& word : words_of(text)) {
        const std::string longer = lines.empty() ? word : lines.back() + " " + word;
        if (!lines.empty() && estimated_width(longer, size) <= width)
            lines.back() = longer;
        else
            lines.push_back(word);
    }
    const bool more = lines.size() > most;
    lines.resize(std::min(lines.size(), most));
    for (std::string& one : lines)
        one = shortened(one, size, width, more && &one == &lines.back());
    return lines;
}

double estimated_width(std::string_view text, double size, bool bold) {
    double shares = 0;
    for (const char byte : text)
        shares += share_of_byte(byte);
    return shares * size / kCapitalShare * (bold ? 1.07 : 1.0);
}

Rect<Wall> estimated_box(const Text<Wall>& text, double scale) {
    const double length = estimated_width(text.text, text.size, text.bold) / scale;
    const double start = text.align == Align::left     ? 0
                         : text.align == Align::centre ? -length / 2
                                                       : -length;
    const double above = text.size / scale;
    const double below = kTails * text.size / scale;
    if (text.upward)
        return {{text.at.x - above, text.at.y + start},
                {text.at.x + below, text.at.y + start + length}};
    return {{text.at.x + start, text.at.y - below},
            {text.at.x + start + length, text.at.y + above}};
}

bool LabelRoom::is_free(const Rect<Wall>& place) const {
    return std::none_of(taken_.begin(), taken_.end(),
                        [&place](const Rect<Wall>& one) { return geometry::overlaps(one, place); });
}

}  // namespace wallwright::draw
