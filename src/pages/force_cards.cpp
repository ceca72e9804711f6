#include "pages/force_cards.h"

#include "draw/forces.h"
#include "draw/letters.h"
#include "pages/standard_scale.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::pages {

namespace {

using hanging::Hanging;

constexpr std::size_t kColumns = 3;
constexpr double kBetween = 5;  // mm
constexpr double kBelow = 5;    // mm, under a row
constexpr Type kName{2.2, true};
constexpr Type kBody{2.2, false};
constexpr Type kWords{1.8, false};

wall::HangerType hanger_of(const wall::Project& project, const Hanging& hanging) {
    const wall::Piece* piece = wall::find(project, hanging.piece);
    return piece == nullptr ? wall::HangerType::strips : piece->hanger.type;
}

/// One of each kind, in the order in which they are met.
std::vector<const Hanging*> one_of_each(const wall::Project& project,
                                        const std::vector<Hanging>& hangings) {
    std::vector<const Hanging*> chosen;
    for (const Hanging& hanging : hangings) {
        if (hanging.fixings.empty())
            continue;
        const auto same = std::ranges::find_if(chosen, [&](const Hanging* other) {
            return hanger_of(project, *other) == hanger_of(project, hanging) &&
                   other->fixings.front().kind == hanging.fixings.front().kind;
        });
        if (same == chosen.end())
            chosen.push_back(&hanging);
        else if ((*same)->use < hanging.use)
            *same = &hanging;
    }
    return chosen;
}

std::string words_for(wall::HangerType hanger) {
    switch (hanger) {
        case wall::HangerType::strips:
            return "strips";
        case wall::HangerType::sawtooth:
            return "sawtooth";
        case wall::HangerType::two_rings:
            return "two rings";
        case wall::HangerType::cord_one_hook:
            return "cord on one hook";
        case wall::HangerType::cord_two_hooks:
            return "cord on two hooks";
        case wall::HangerType::keyholes:
            return "keyholes";
    }
    return "";
}

struct Line {
    std::string text;
    draw::Ink ink = draw::Ink::text;
    double above = 0;  ///< mm of air.
};

/// The drawing under its name, with its formulas below or, where there is but one card, beside.
struct Card {
    std::vector<std::string> name;
    Scaled forces;
    std::vector<Line> words;

    [[nodiscard]] double name_height() const {
        return static_cast<double>(name.size()) * line_height(kName.size) + 2;
    }
    [[nodiscard]] double words_height() const {
        double height = 0;
        for (const Line& line : words)
            height += line.above + line_height(kWords.size);
        return height;
    }
    [[nodiscard]] double height(bool beside) const {
        const double drawing = forces.size_on_page().height;
        return name_height() +
               (beside ? std::max(drawing, words_height()) : drawing + words_height());
    }
};

void add_lines(std::vector<Line>& lines, const std::string& text, draw::Ink ink, double above,
               double width) {
    for (const std::string& line : lines_of(text, kWords, width)) {
        lines.push_back({line, ink, above});
        above = 0;
    }
}

std::vector<Line> words_of(const hanging::FreeBody& body, double width) {
    constexpr double kAir = 1;
    std::vector<Line> lines;
    for (const hanging::Worked& one : body.worked) {
        add_lines(lines, one.about, draw::Ink::quiet_text, kAir, width);
        add_lines(lines, one.formula, draw::Ink::text, 0, width);
    }
    for (const std::string& remark : body.remarks)
        add_lines(lines, remark, draw::Ink::quiet_text, kAir, width);
    return lines;
}

std::string title_of_card(const wall::Project& project, const Hanging& hanging) {
    const bool on_rail = hanging.fixings.front().kind == wall::FixingKind::rail_hook;
    return fmt::format("{}  {}: {}{}", draw::letter_of(project, hanging.piece),
                       wall::title_of(project, hanging.piece),
                       words_for(hanger_of(project, hanging)), on_rail ? ", from the rail" : "");
}

Card card_of(const wall::Project& project, const Hanging& hanging, double width,
             double words_width) {
    const hanging::FreeBody body = hanging::free_body(project, hanging);
    draw::ScaledForces forces =
        draw::force_drawing_within(body, {0.1, project.unit, false, width}, width);
    return {lines_of(title_of_card(project, hanging), kName, width),
            {1 / forces.scale, std::move(forces.drawing)},
            words_of(body, words_width)};
}

void add_card(Shapes& shapes, const Card& card, Spot upper_left, bool beside, double pitch) {
    double y = upper_left.y;
    for (const std::string& line : card.name) {
        y += line_height(kName.size);
        shapes.emplace_back(text_at({upper_left.x, y - 0.9}, line, kName));
    }
    y = upper_left.y + card.name_height();
    const draw::PageDrawing placed =
        draw::placed_on_page(card.forces.drawing, put_at(card.forces, {upper_left.x, y}));
    shapes.insert(shapes.end(), placed.shapes.begin(), placed.shapes.end());
    y += beside ? -line_height(kWords.size) / 2 : card.forces.size_on_page().height;
    const double x = upper_left.x + (beside ? pitch : 0);
    for (const Line& line : card.words) {
        y += line.above + line_height(kWords.size);
        shapes.emplace_back(text_at({x, y}, line.text, kWords, line.ink));
    }
}

}  // namespace

void add_force_cards(Flow& flow, const wall::Project& project,
                     const rules::Assessment& assessment) {
    const std::vector<const Hanging*> chosen = one_of_each(project, assessment.hangings);
    if (chosen.empty())
        return;
    const bool beside = chosen.size() == 1;
    const double width = flow.content().width();
    const double pitch = (width + kBetween) / kColumns;
    std::vector<Card> cards;
    for (const Hanging* hanging : chosen)
        cards.push_back(card_of(project, *hanging, pitch - kBetween,
                                beside ? width - pitch : pitch - kBetween));
    const auto row_height = [&cards, beside](std::size_t first) {
        double height = 0;
        for (std::size_t i = first; i < std::min(first + kColumns, cards.size()); ++i)
            height = std::max(height, cards[i].height(beside));
        return height;
    };
    constexpr double kSentence = 10;  // mm, below the heading
    flow.add_heading("Forces", row_height(0) + kSentence);
    flow.add_text(
        "Of each way of hanging the piece that asks most of its fixings, by its high weight. "
        "Arrows are as long as their forces; from the side, forces at one height are one arrow.",
        kBody);
    flow.advance(2);
    for (std::size_t first = 0; first < cards.size(); first += kColumns) {
        flow.need(row_height(first));
        for (std::size_t i = first; i < std::min(first + kColumns, cards.size()); ++i)
            add_card(flow.shapes(), cards[i],
                     {flow.content().min.x + static_cast<double>(i - first) * pitch, flow.top()},
                     beside, pitch);
        flow.advance(row_height(first) + kBelow);
    }
}

}  // namespace wallwright::pages
