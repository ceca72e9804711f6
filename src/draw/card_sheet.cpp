#include "draw/card_sheet.h"

#include "draw/dimensions.h"
#include "draw/paths.h"
#include "draw/tint.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Size;
using geometry::Wall;
using mounts::OnSheet;

// All in mm on paper.
constexpr double kTitleSize = 2.5;
constexpr double kSmall = 1.8;
constexpr double kLine = 3.6;     // from one line of words to the next
constexpr double kWordAir = 1.2;  // between words and the edge of their blank
constexpr double kDisc = 1.9;     // radius of a cut's number
constexpr double kChain = 7;      // from the sheet to its measures
constexpr double kGrainOut = 6;   // from the sheet to the arrow of its grain
constexpr double kHatch = 2.2;

const Stroke kSheetEdge{{Ink::outline}, 0.5};
const Stroke kBlankEdge{{Ink::outline}, 0.35};
const Stroke kCutLine{{Ink::accent}, 0.5};
const Stroke kThin{{Ink::hidden}, 0.18};

class Sheet {
  public:
    Sheet(Easel& easel, const mounts::CardLot& lot, std::size_t sheet)
        : easel_(easel),
          lot_(lot),
          sheet_(lot.plan.sheets.at(sheet)),
          kind_(lot.task.sheets.at(sheet_.sheet)) {}

    void add_card() {
        easel_.add(box(Rect<Wall>::at({0, 0}, kind_.size), {Paint{Ink::paper}, kSheetEdge}));
        for (const OnSheet& offcut : sheet_.offcuts)
            add_offcut(on_wall(offcut));
        for (const mounts::PlacedBlank& placed : sheet_.placed)
            add_blank(placed);
        if (kind_.margin > 0)
            easel_.add(box(Rect<Wall>::at({0, 0}, kind_.size).grown(-kind_.margin),
                           {std::nullopt, Stroke{{Ink::hidden}, 0.25, LineType::dashed}}));
    }

    void add_cuts() {
        for (const mounts::SheetCut& cut : sheet_.cuts)
            easel_.add(line(end_of(cut, 0), end_of(cut, 1), kCutLine));
        for (const mounts::SheetCut& cut : sheet_.cuts)
            add_number(cut);
    }

    void add_words() {
        for (const mounts::PlacedBlank& placed : sheet_.placed)
            add_centred(on_wall(placed.place), blank_words(placed), card_plate());
        for (const OnSheet& offcut : sheet_.offcuts)
            add_centred(on_wall(offcut), {{"left over", false}, {size_words(offcut.size), false}},
                        Paint{Ink::paper});
    }

    void add_measures() {
        const double out = -easel_.on_wall(kChain);
        add_chains(easel_, {{spacing::Axis::horizontal, out, {{0, 0}, {kind_.size.width, 0}}},
                            {spacing::Axis::vertical, out, {{0, 0}, {kind_.size.height, 0}}}});
    }

    /// Both ways along the grain, beside the sheet.
    void add_grain() {
        if (!kind_.has_grain)
            return;
        const double x = kind_.size.width + easel_.on_wall(kGrainOut);
        const double middle = kind_.size.height / 2;
        const double half = std::min(0.4 * kind_.size.height, easel_.on_wall(14));
        const double head = easel_.on_wall(1.6);
        const Stroke stroke{{Ink::outline}, 0.35};
        for (const double sign : {-1.0, 1.0}) {
            const double tip = middle + sign * half;
            easel_.add(lines<Wall>(
                {{x - head / 2, tip - sign * head}, {x, tip}, {x + head / 2, tip - sign * head}},
                stroke));
        }
        easel_.add(line<Wall>({x, middle - half}, {x, middle + half}, stroke));
        Text<Wall> text{{x + easel_.on_wall(kWordAir + kSmall), middle}, "grain"};
        text.size = kSmall;
        text.align = Align::centre;
        text.upward = true;
        easel_.add_label(text);
    }

  private:
    struct Word {
        std::string text;
        bool bold = false;
    };

    [[nodiscard]] Rect<Wall> on_wall(const OnSheet& place) const {
        const double top = kind_.size.height - place.top;
        return {{place.left, top - place.size.height}, {place.left + place.size.width, top}};
    }

    [[nodiscard]] std::string size_words(Size size) const {
        return fmt::format("{} × {}", easel_.figure(size.width), easel_.figure(size.height));
    }

    [[nodiscard]] Paint card_plate() const { return own(wash(lot_.colour)); }

    void add_offcut(const Rect<Wall>& place) {
        easel_.add(Hatch<Wall>{
            {{place.min, {place.max.x, place.min.y}, place.max, {place.min.x, place.max.y}}},
            Paint{Ink::hidden, {}, 0.45},
            kHatch});
        easel_.add(box(place, {std::nullopt, kThin}));
    }

    void add_blank(const mounts::PlacedBlank& placed) {
        const Rect<Wall> place = on_wall(placed.place);
        easel_.add(box(place, {card_plate(), kBlankEdge}));
        for (const Rect<Wall>& window : windows_of(placed))
            easel_.add(box(window, {std::nullopt, kThin}));
    }

    /// As they lie in the blank; a turned one is turned clockwise.
    [[nodiscard]] std::vector<Rect<Wall>> windows_of(const mounts::PlacedBlank& placed) const {
        std::vector<Rect<Wall>> places;
        for (const mounts::LotWindow& window : lot_.windows) {
            if (window.blank != placed.blank)
                continue;
            OnSheet place = window.place;
            if (placed.turned)
                place = {placed.place.size.width - place.top - place.size.height, place.left,
                         place.size.turned()};
            place.left += placed.place.left;
            place.top += placed.place.top;
            places.push_back(on_wall(place));
        }
        return places;
    }

    [[nodiscard]] std::vector<Word> blank_words(const mounts::PlacedBlank& placed) const {
        const mounts::BlankOwner& owner = lot_.owners[placed.blank];
        std::vector<Word> words{{owner.title, true}};
        if (owner.layers > 1)
            words.push_back({fmt::format("layer {} of {}", owner.layer + 1, owner.layers), false});
        words.push_back({size_words(placed.place.size) + (placed.turned ? ", turned" : ""), false});
        if (lot_.kept[placed.blank])
            words.push_back({"kept here", true});
        return words;
    }

    /// In the middle of the place, the first words first; what has no room is left out, what is too
    /// wide is tried upward where that has more room.
    void add_centred(const Rect<Wall>& place, const std::vector<Word>& words, const Paint& plate) {
        const double title = words.front().bold ? kTitleSize : kSmall;
        const bool upward = place.height() > place.width() &&
                            estimated_width(words.front().text, title, words.front().bold) >
                                place.width() * easel_.scale - 2 * kWordAir;
        const double along = (upward ? place.height() : place.width()) * easel_.scale;
        const double across = (upward ? place.width() : place.height()) * easel_.scale;
        const auto most = static_cast<std::size_t>(std::max(0.0, (across - kWordAir) / kLine));
        std::vector<Word> shown;
        for (const Word& word : words) {
            const double size = word.bold ? kTitleSize : kSmall;
            const std::vector<std::string> fitted =
                wrapped(word.text, size, (along - 2 * kWordAir) / (word.bold ? 1.07 : 1), 1);
            const bool whole = !fitted.empty() && fitted.front() == word.text;
            const bool readable =
                whole || (word.bold && !fitted.empty() && fitted.front().size() > 5);
            if (shown.size() < most && readable)
                shown.push_back({fitted.front(), word.bold});
        }
        for (std::size_t i = 0; i < shown.size(); ++i)
            add_line(place, shown[i], upward, plate,
                     static_cast<double>(i) - static_cast<double>(shown.size() - 1) / 2);
    }

    /// `down`: lines below the middle.
    void add_line(const Rect<Wall>& place, const Word& word, bool upward, const Paint& plate,
                  double down) {
        const double size = word.bold ? kTitleSize : kSmall;
        const double off = easel_.on_wall(down * kLine + size / 2);
        const Point<Wall> c = place.centre();
        Text<Wall> text{upward ? Point<Wall>{c.x + off, c.y} : Point<Wall>{c.x, c.y - off},
                        word.text};
        text.size = size;
        text.bold = word.bold;
        text.align = Align::centre;
        text.upward = upward;
        text.plate = plate;
        const Text<Wall> choice[] = {text};
        easel_.add_first_inside(choice, place);
    }

    /// The point of the cut at a share of its length, from its left or upper end.
    [[nodiscard]] Point<Wall> end_of(const mounts::SheetCut& cut, double share) const {
        const Rect<Wall> piece = on_wall(cut.piece);
        if (cut.upright)
            return {cut.at, piece.max.y - share * piece.height()};
        return {piece.min.x + share * piece.width(), kind_.size.height - cut.at};
    }

    /// On its cut, as near to where that begins as there is room.
    void add_number(const mounts::SheetCut& cut) {
        constexpr int kSteps = 24;
        for (int step = 0; step <= kSteps; ++step) {
            const double share = 0.08 + 0.84 * step / kSteps;
            const Point<Wall> at = end_of(cut, share);
            const Rect<Wall> around = Rect<Wall>{at, at}.grown(easel_.on_wall(kDisc));
            if (!easel_.room.is_free(around) && step < kSteps)
                continue;
            easel_.room.take(around);
            easel_.add(circle(at, easel_.on_wall(kDisc),
                              {Paint{Ink::paper}, Stroke{{Ink::accent}, 0.25}}));
            Text<Wall> text{{at.x, at.y - easel_.on_wall(kSmall) / 2},
                            fmt::format("{}", cut.number)};
            text.size = kSmall;
            text.bold = true;
            text.align = Align::centre;
            text.paint.ink = Ink::accent;
            easel_.add(text);
            return;
        }
    }

    Easel& easel_;
    const mounts::CardLot& lot_;
    const mounts::CutSheet& sheet_;
    const mounts::NestSheet& kind_;
};

}  // namespace

WallDrawing card_sheet(const mounts::CardLot& lot, std::size_t sheet, units::LengthUnit unit,
                       const CardSheetOptions& options) {
    Easel easel{options.scale, unit};
    Sheet drawn(easel, lot, sheet);
    drawn.add_card();
    if (options.cuts)
        drawn.add_cuts();
    drawn.add_words();
    drawn.add_grain();
    if (options.measures)
        drawn.add_measures();
    const Rect<Wall> extent = extent_of(easel.shapes, options.scale);
    return {extent, std::move(easel.shapes)};
}

Rect<Wall> in_card_sheet(const mounts::CardLot& lot, std::size_t sheet, const OnSheet& place) {
    const double top = lot.task.sheets.at(lot.plan.sheets.at(sheet).sheet).size.height - place.top;
    return {{place.left, top - place.size.height}, {place.left + place.size.width, top}};
}

}  // namespace wallwright::draw
