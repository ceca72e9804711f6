#include "pages/stop_notes.h"

#include "draw/letters.h"
#include "pages/render.h"
#include "pages/sign.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace wallwright::pages {

namespace {

using wall::Severity;

void add_note(Flow& flow, const std::string& words) {
    constexpr Type kType{2.4, true};
    const double indent = stop_indent(kType.size);
    const std::vector<std::string> lines = lines_of(words, kType, flow.content().width() - indent);
    flow.need(static_cast<double>(lines.size()) * line_height(kType.size) + 1);
    const double left = flow.content().min.x;
    double y = flow.top() + line_height(kType.size) - 0.4 * kType.size;
    add_stop_sign(flow.shapes(), {left, y}, kType.size);
    for (const std::string& line : lines) {
        flow.shapes().emplace_back(
            text_at({left + indent, y}, line, kType, ink_of(Severity::stop)));
        y += line_height(kType.size);
    }
    flow.advance(static_cast<double>(lines.size()) * line_height(kType.size) + 1);
}

std::string count_words(const std::vector<std::string>& names) {
    return fmt::format("{} {} a stop: {}.", names.size(),
                       names.size() == 1 ? "piece has" : "pieces have", fmt::join(names, ", "));
}

}  // namespace

double stop_indent(double size) {
    return 2.1 * size;
}

void add_stop_sign(Shapes& shapes, Spot at, double size) {
    const double share = size / 3;
    add_sign(shapes, Severity::stop, {at.x + share * kSignRadius, at.y - size / 2}, share);
}

std::string letter_and_title(const wall::Project& project, const wall::PieceId& piece) {
    return draw::letter_of(project, piece) + " " + wall::title_of(project, piece);
}

std::string stop_words(const rules::Assessment& assessment, const wall::PieceId& piece) {
    const auto stops = rules::stops_of(assessment, piece);
    if (stops.empty())
        return "";
    return fmt::format("Stop: {}", rules::few_words(*stops.front()));
}

std::string stopped_words(const wall::Project& project, const rules::Assessment& assessment) {
    std::vector<std::string> names;
    for (const wall::PieceId& piece : rules::stopped_pieces(project, assessment))
        names.push_back(letter_and_title(project, piece));
    return names.empty() ? "" : count_words(names) + " See the findings.";
}

std::vector<std::string> unmarked_words(const wall::Project& project,
                                        const rules::Assessment& assessment) {
    std::vector<std::string> all;
    for (const wall::PieceId& piece : rules::unmarked_pieces(project, assessment))
        all.push_back(fmt::format("{} has no mark: {}", letter_and_title(project, piece),
                                  rules::why_unmarked(project, assessment, piece)));
    return all;
}

std::string short_unmarked_words(const wall::Project& project,
                                 const rules::Assessment& assessment) {
    std::string all;
    for (const wall::PieceId& piece : rules::unmarked_pieces(project, assessment)) {
        const auto stops = rules::stops_of(assessment, piece);
        all += fmt::format("{}{} has no mark: {}.", all.empty() ? "" : " ",
                           letter_and_title(project, piece),
                           stops.empty() ? "see the findings" : rules::few_words(*stops.front()));
    }
    return all;
}

std::string short_stop_words(const wall::Project& project, const rules::Assessment& assessment) {
    const auto letters = [&project](const std::vector<wall::PieceId>& pieces) {
        std::vector<std::string> names;
        for (const wall::PieceId& piece : pieces)
            names.push_back(draw::letter_of(project, piece));
        return names;
    };
    const auto stopped = letters(rules::stopped_pieces(project, assessment));
    const auto unmarked = letters(rules::unmarked_pieces(project, assessment));
    std::string words;
    if (!stopped.empty())
        words += count_words(stopped) + " ";
    if (!unmarked.empty())
        words += fmt::format("{} {} no mark. ", fmt::join(unmarked, ", "),
                             unmarked.size() == 1 ? "has" : "have");
    return words.empty() ? "" : words + "See the findings.";
}

double add_stop_line(Shapes& shapes, Spot at, const std::string& words, const Type& type,
                     double width) {
    const double indent = stop_indent(type.size);
    const std::string line = shortened(words, type, width - indent);
    add_stop_sign(shapes, at, type.size);
    shapes.emplace_back(text_at({at.x + indent, at.y}, line, type, ink_of(Severity::stop)));
    return indent + text_width(line, type.size, type.bold);
}

void add_stop_notes(Flow& flow, const wall::Project& project, const rules::Assessment& assessment) {
    const std::string stopped = stopped_words(project, assessment);
    const std::vector<std::string> unmarked = unmarked_words(project, assessment);
    if (!stopped.empty())
        add_note(flow, stopped);
    for (const std::string& words : unmarked)
        add_note(flow, words);
    if (!stopped.empty() || !unmarked.empty())
        flow.advance(1);
}

}  // namespace wallwright::pages
