#include "mounts/design/cutting_words.h"

#include "mounts/design/rule_step.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::mounts {

namespace {

using units::format_length;
using units::LengthUnit;
using Sentences = std::vector<std::string>;

std::string size_text(geometry::Size size, LengthUnit unit) {
    return fmt::format("{} x {}", units::format_number(size.width, unit),
                       format_length(size.height, unit));
}

void add_trimming(Sentences& steps, const MountDesign& design, const BackMarks& marks,
                  LengthUnit unit) {
    const std::size_t count = design.layers.size();
    steps.push_back(fmt::format("Trim {} to {}; {} square when both diagonals are {}.",
                                count == 1 ? "the blank" : fmt::format("all {} blanks", count),
                                size_text(marks.blank, unit), count == 1 ? "it is" : "each is",
                                format_length(marks.layers.front().diagonal, unit)));
}

std::string marking(const WindowMarks& window, const std::string& title, LengthUnit unit) {
    const Borders& from = window.from_edges;
    return fmt::format(
        "For {}: {} from the left edge as it lies, {} from the right, {} from the upper and {} "
        "from the lower one. Both diagonals from cross to cross are {}; cut nothing before they "
        "are.",
        title, format_length(from.left, unit), format_length(from.right, unit),
        format_length(from.top, unit), format_length(from.bottom, unit),
        format_length(window.diagonal, unit));
}

std::string layer_name(std::size_t number, std::size_t count) {
    if (count == 1)
        return "the blank";
    return number == 1 ? "the top layer" : fmt::format("layer {}", number);
}

/// mm of all boards in front of this one, which lie below it on the table.
double in_front_of(const MountDesign& design, std::size_t number) {
    double sum = 0;
    for (std::size_t i = 0; i + 1 < number; ++i)
        sum += design.layers[i].card.thickness;
    return sum;
}

void add_sticking(Sentences& steps, const MountDesign& design, bool single, std::size_t number) {
    steps.push_back(fmt::format(
        "Fill {} in front with scrap card {} thick, so that the next cuts have a firm bed, and "
        "stick the blank of {} behind, face to back and edge to edge, with double-sided tape clear "
        "of the {}.",
        single ? "the window" : "the windows", board_text(in_front_of(design, number)),
        layer_name(number, design.layers.size()), single ? "window" : "windows"));
}

/// How to hold the knife is told once for layers of one bevel.
void add_cutting(Sentences& steps, const LayerMarks& layer, const LayerMarks* in_front) {
    const bool single = layer.windows.size() == 1;
    if (in_front == nullptr || !geometry::is_same_length(in_front->bevel, layer.bevel))
        steps.push_back(line_advice(layer));
    steps.push_back(fmt::format(
        "Cut {} from corner cross to corner cross, never to the edge of the blank: {}. Turn the "
        "card a quarter after each cut, so that all run in one direction with the border under the "
        "rule.",
        single ? "the window" : "one window after the other", cut_ends(layer)));
    steps.push_back(
        fmt::format("Turn it over: {} free now. Lift {} out whole and keep {} for a "
                    "smaller mount.",
                    single ? "the piece cut out is" : "the pieces cut out are",
                    single ? "it" : "them", single ? "it" : "them"));
}

void add_layer(Sentences& steps, const MountDesign& design, const BackMarks& marks,
               std::size_t number, LengthUnit unit) {
    const LayerMarks& layer = marks.layers[number - 1];
    const bool single = layer.windows.size() == 1;
    if (number > 1)
        add_sticking(steps, design, single, number);
    steps.push_back(fmt::format(
        "Lay {} face down, its upper edge away from you, and draw the four lines of {} from the "
        "blank's own edges, past the corners, so that a cross stands at each.",
        layer_name(number, design.layers.size()), single ? "the window" : "each window"));
    for (std::size_t i = 0; i < layer.windows.size(); ++i)
        steps.push_back(marking(layer.windows[i], window_name(design, i), unit));
    add_cutting(steps, layer, number > 1 ? &marks.layers[number - 2] : nullptr);
}

/// What to measure of each layer but the top one.
std::string reveals_text(const BackMarks& marks, LengthUnit unit) {
    std::string text;
    for (std::size_t i = 1; i < marks.layers.size(); ++i) {
        const LayerMarks& layer = marks.layers[i];
        text += fmt::format("{}{} of layer {}", i == 1 ? "" : ", ",
                            format_length(layer.reveal, unit), i + 1);
        if (marks.layers[i - 1].bevel > 0)
            text += fmt::format(" ({} of its colour beside the bevel)",
                                format_length(layer.shown, unit));
    }
    return text;
}

Sentences floating_steps(const MountDesign& design, const BackMarks& marks, LengthUnit unit) {
    Sentences steps;
    add_trimming(steps, design, marks, unit);
    for (std::size_t i = 0; i < marks.hinges.size(); ++i)
        steps.push_back(fmt::format(
            "Mark the upper corners of {} on the face of the card with a hard pencil, under where "
            "the paper will lie: {} from the left and {} from the top.",
            design.prints[i].title, format_length(marks.hinges[i].place.left(), unit),
            format_length(marks.hinges[i].place.top(), unit)));
    if (design.depth.spacer > 0)
        steps.push_back(fmt::format(
            "Put spacers of {} or more under the frame's lip, so that the glazing stays off the "
            "print.",
            board_text(design.depth.spacer)));
    return steps;
}

}  // namespace

std::string line_advice(const LayerMarks& layer) {
    if (layer.bevel <= 0)
        return "Hold the knife upright on the line, with the rule on the border's side.";
    return fmt::format(
        "Take a mount cutter, which holds its blade at 45 degrees, with the edge in the line and "
        "the handle over the piece that falls out: the line is the opening at the back, and at the "
        "face the window comes out {} larger on each side.",
        board_text(layer.bevel));
}

std::string cut_ends(const LayerMarks& layer) {
    if (layer.bevel <= 0)
        return "in at one cross and out at the next";
    return fmt::format(
        "the blade's point goes in one thickness of the card, {0}, before the first "
        "cross and comes out {0} past the next, so that the corners meet at the "
        "face",
        board_text(layer.bevel));
}

std::string window_name(const MountDesign& design, std::size_t index) {
    const std::string& title = design.prints[index].title;
    return design.prints.size() == 1 ? title
                                     : fmt::format("window {}, {}", letter_of(index), title);
}

Sentences cutting_steps(const MountDesign& design, LengthUnit unit) {
    const BackMarks marks = back_marks(design, rule_step(unit));
    if (design.floats)
        return floating_steps(design, marks, unit);
    Sentences steps;
    add_trimming(steps, design, marks, unit);
    const std::size_t count = marks.layers.size();
    for (std::size_t i = 0; i < count; ++i)
        add_layer(steps, design, marks, i + 1, unit);
    if (count > 1)
        steps.push_back(fmt::format("Look from the front whether the reveal is even all round: {}.",
                                    reveals_text(marks, unit)));
    return steps;
}

Sentences hinging_steps(const MountDesign& design, LengthUnit unit) {
    const BackMarks marks = back_marks(design, rule_step(unit));
    Sentences steps;
    if (!design.floats) {
        steps.push_back(fmt::format(
            "Cut an undermount to {}, as large as the blank, of acid-free mount card {} thick. It "
            "lies between the print, which is hung on it, and the frame's backing.",
            size_text(marks.blank, unit), board_text(undermount_thickness(design))));
        steps.emplace_back(
            "Join mount and undermount along their upper edges with a strip of linen tape inside, "
            "1 mm apart, so that the mount closes flat like a book.");
    }
    for (std::size_t i = 0; i < marks.hinges.size(); ++i) {
        const Hinging& hinge = marks.hinges[i];
        steps.push_back(fmt::format(
            "Lay {} on the {}, its upper left corner {} from the left edge and {} from the top as "
            "seen from the front. Hang it by its upper edge alone from two {}, their middles {} "
            "from its corners.",
            design.prints[i].title, design.floats ? "card" : "undermount",
            format_length(hinge.place.left(), unit), format_length(hinge.place.top(), unit),
            design.floats ? "hinges folded out of sight behind it"
                          : "T-hinges that the mount covers",
            format_length(hinge.from_side, unit)));
    }
    steps.emplace_back(
        "A hinge is Japanese paper and wheat-starch paste: one strip on the back of the print, a "
        "larger one across it on the board. No self-adhesive tape touches the print and nothing is "
        "glued down, so that paper can stretch and the print can be taken out.");
    return steps;
}

Sentences knife_cautions(const MountDesign& design) {
    Sentences cautions{
        "Begin each mount with a new blade; a dull one tears the card and slips.",
        "Lay an old piece of card below, and keep the print off the table while you cut.",
        "Keep the hand that holds the rule behind the blade and away from its path.",
    };
    if (design.floats)
        return cautions;
    cautions.emplace_back(
        "Keep the rule on the border's side of the line, so that a slip goes into the piece that "
        "falls out.");
    cautions.emplace_back(
        "Do not pull at a corner that hangs on; free it from the face with a loose blade.");
    if (design.edge == wall::WindowEdge::bevel)
        cautions.emplace_back(
            "Try the bevel on a scrap of the same card first: the blade comes just through it, the "
            "corners meet at the face and no cut runs on past them.");
    return cautions;
}

}  // namespace wallwright::mounts
