#include "mounts/design/cutting_words.h"

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
                                size_text(design.blank, unit), count == 1 ? "it is" : "each is",
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

void add_layer(Sentences& steps, const MountDesign& design, const LayerMarks& layer,
               std::size_t number, LengthUnit unit) {
    const std::string name = layer_name(number, design.layers.size());
    const bool single = layer.windows.size() == 1;
    if (number > 1)
        steps.push_back(fmt::format(
            "Lay what was cut out back into its place and stick the blank of {} behind, face to "
            "back and edge to edge, with double-sided tape clear of the windows.",
            name));
    steps.push_back(fmt::format(
        "Lay {} face down, its upper edge away from you, and draw the four lines of {} from the "
        "blank's own edges, past the corners, so that a cross stands at each.",
        name, single ? "the window" : "each window"));
    for (std::size_t i = 0; i < layer.windows.size(); ++i)
        steps.push_back(marking(layer.windows[i], design.prints[i].title, unit));
    steps.push_back(fmt::format(
        "Cut {} from corner cross to corner cross, never to the edge of the blank. {}",
        single ? "the window" : "one window after the other", line_advice(layer, unit)));
}

Sentences floating_steps(const MountDesign& design, const BackMarks& marks, LengthUnit unit) {
    Sentences steps;
    add_trimming(steps, design, marks, unit);
    for (const LaidPrint& print : design.prints)
        steps.push_back(fmt::format(
            "Mark the upper corners of {} on the face of the card with a hard pencil, under where "
            "the paper will lie: {} from the left and {} from the top.",
            print.title, format_length(print.place.left(), unit),
            format_length(print.place.top(), unit)));
    steps.emplace_back(
        "Put spacers under the frame's lip, so that the glazing stays off the print.");
    return steps;
}

}  // namespace

std::string line_advice(const LayerMarks& layer, LengthUnit unit) {
    if (layer.bevel <= 0)
        return "Hold the knife upright on the line, with the rule on the border's side.";
    return fmt::format(
        "Hold the knife at 45 degrees with its edge in the line and its handle over "
        "the piece that falls out: the line is the opening at the back, and at the "
        "face the window comes out {} larger on each side.",
        format_length(layer.bevel, unit));
}

Sentences cutting_steps(const MountDesign& design, LengthUnit unit) {
    const BackMarks marks = back_marks(design);
    if (design.floats)
        return floating_steps(design, marks, unit);
    Sentences steps;
    add_trimming(steps, design, marks, unit);
    const std::size_t count = marks.layers.size();
    for (std::size_t i = 0; i < count; ++i)
        add_layer(steps, design, marks.layers[i], i + 1, unit);
    steps.emplace_back(count == 1 ? "Turn it over and let the piece fall out of the window."
                                  : "Turn all over, let the pieces fall out, and look whether the "
                                    "reveal is even all round.");
    return steps;
}

Sentences hinging_steps(const MountDesign& design, LengthUnit unit) {
    const BackMarks marks = back_marks(design);
    Sentences steps;
    if (!design.floats)
        steps.emplace_back(
            "Join mount and backing board along their upper edges with a strip of linen tape "
            "inside, 1 mm apart, so that the mount closes flat like a book.");
    for (std::size_t i = 0; i < marks.hinges.size(); ++i) {
        const Hinging& hinge = marks.hinges[i];
        steps.push_back(fmt::format(
            "Lay {} on the {}, its upper left corner {} from the left edge and {} from the top as "
            "seen from the front. Hang it by its upper edge alone from two {}, their middles {} "
            "from its corners.",
            design.prints[i].title, design.floats ? "card" : "backing board",
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

Sentences knife_cautions(const MountDesign& design, LengthUnit unit) {
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
    double thickest = 0;
    for (const CutLayer& layer : design.layers)
        thickest = std::max(thickest, layer.card.thickness);
    if (design.edge == wall::WindowEdge::bevel)
        cautions.push_back(fmt::format(
            "Try the bevel on a scrap of the same card first: the blade's point goes through the "
            "card, up to {} here, and comes out as far beyond the cross at the face.",
            format_length(thickest, unit)));
    return cautions;
}

}  // namespace wallwright::mounts
