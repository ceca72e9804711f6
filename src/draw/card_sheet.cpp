#include "draw/card_sheet.h"

#include "draw/dimensions.h"
#include "draw/paths.h"
#include "draw/tint.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>
#include <variant>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Size;
using geometry::Wall;
using mounts::OnSheet;

// All in mm on paper.
constexpr double kTitleSize = 2.5;
constexpr double kSmall = 1.8;
constexpr double kLine = 3.6;       // from one line of words to the next
constexpr double kWordAir = 1.2;    // between words and the edge of their blank
constexpr double kLetterAir = 0.4;  // between letters and the outline of a window
constexpr double kDisc = 1.9;       // radius of a cut's number
constexpr double kChain = 7;        // from the sheet to its measures
constexpr double kGrainOut = 6;     // from the sheet to the arrow of its grain
constexpr double kHatch = 2.2;

const Stroke kSheetEdge{{Ink::outline}, 0.5};
const Stroke kBlankEdge{{Ink::outline}, 0.35};
const Stroke kCutLine{{Ink::accent}, 0.5};
const Stroke kThin{{Ink::hidden}, 0.18};

/// Stretches of one line that no other stretch reaches into.
std::vector<std::pair<double, double>> gaps(double from, double to,
                                            std::vector<std::pair<double, double>> taken) {
    std::ranges::sort(taken);
    std::vector<std::pair<double, double>> free;
    for (const auto& [start, end] : taken) {
        if (start > from)
            free.emplace_back(from, start);
        from = std::max(from, end);
    }
    if (to > from)
        free.emplace_back(from, to);
    return free;
}

/// From edge to edge of the blank, beside its windows.
std::vector<Rect<Wall>> strips_of(const Rect<Wall>& blank, const std::vector<Rect<Wall>>& windows) {
    std::vector<Rect<Wall>> strips;
    std::vector<std::pair<double, double>> across;
    std::vector<std::pair<double, double>> down;
    for (const Rect<Wall>& window : windows) {
        across.emplace_back(window.min.x, window.max.x);
        down.emplace_back(window.min.y, window.max.y);
    }
    for (const auto& [from, to] : gaps(blank.min.x, blank.max.x, std::move(across)))
        strips.push_back({{from, blank.min.y}, {to, blank.max.y}});
    for (const auto& [from, to] : gaps(blank.min.y, blank.max.y, std::move(down)))
        strips.push_back({{blank.min.x, from}, {blank.max.x, to}});
    return strips;
}

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
            easel_.add(box(on_wall(placed.place), {card_plate(), kBlankEdge}));
        windows_at_ = easel_.shapes.size();
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
            add_words_of(placed);
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

    /// In the largest window with room for all of them, else in the largest strip beside the
    /// windows that has it; where neither has, in the middle of the blank, and then its windows are
    /// left out.
    void add_words_of(const mounts::PlacedBlank& placed) {
        const Rect<Wall> blank = on_wall(placed.place);
        const std::vector<Rect<Wall>> windows = windows_of(placed);
        const std::vector<Word> words = blank_words(placed);
        std::optional<Rect<Wall>> room = largest_for(windows, words);
        if (!room)
            room = largest_for(strips_of(blank, windows), words);
        const std::size_t before = easel_.shapes.size();
        add_centred(room.value_or(blank), words, card_plate());
        const bool crossed = std::any_of(
            easel_.shapes.begin() + static_cast<std::ptrdiff_t>(before), easel_.shapes.end(),
            [&](const Shape<Wall>& shape) {
                const Rect<Wall> box = estimated_box(std::get<Text<Wall>>(shape), easel_.scale)
                                           .grown(easel_.on_wall(kLetterAir));
                return std::ranges::any_of(windows, [&box](const Rect<Wall>& window) {
                    return runs_through(window, box);
                });
            });
        if (!crossed)
            for (const Rect<Wall>& window : windows)
                add_window(window);
    }

    /// The largest place that has room for all of the words.
    [[nodiscard]] std::optional<Rect<Wall>> largest_for(const std::vector<Rect<Wall>>& places,
                                                        const std::vector<Word>& words) const {
        std::optional<Rect<Wall>> largest;
        for (const Rect<Wall>& place : places)
            if ((!largest || place.size().area() > largest->size().area()) &&
                fitted(place, words).all)
                largest = place;
        return largest;
    }

    /// Whether the outline of the window runs through the box.
    static bool runs_through(const Rect<Wall>& window, const Rect<Wall>& box) {
        return overlaps(window, box) && !(window.contains(box.min) && window.contains(box.max));
    }

    /// Under cuts and words.
    void add_window(const Rect<Wall>& window) {
        easel_.shapes.insert(easel_.shapes.begin() + static_cast<std::ptrdiff_t>(windows_at_),
                             box(window, {std::nullopt, kThin}));
        ++windows_at_;
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

    struct Fitted {
        std::vector<Word> words;
        bool upward = false;
        bool all = false;  ///< None is left out or cut off.
    };

    /// What has no room is left out, the first words first; what is too wide is tried upward where
    /// that has more room.
    [[nodiscard]] Fitted fitted(const Rect<Wall>& place, const std::vector<Word>& words) const {
        const double title = words.front().bold ? kTitleSize : kSmall;
        const bool upward = place.height() > place.width() &&
                            estimated_width(words.front().text, title, words.front().bold) >
                                place.width() * easel_.scale - 2 * kWordAir;
        const double along = (upward ? place.height() : place.width()) * easel_.scale;
        const double across = (upward ? place.width() : place.height()) * easel_.scale;
        const auto most = static_cast<std::size_t>(std::max(0.0, (across - kWordAir) / kLine));
        Fitted found{{}, upward, true};
        for (const Word& word : words) {
            const double size = word.bold ? kTitleSize : kSmall;
            const std::vector<std::string> lines =
                wrapped(word.text, size, (along - 2 * kWordAir) / (word.bold ? 1.07 : 1), 1);
            const bool whole = !lines.empty() && lines.front() == word.text;
            const bool readable =
                whole || (word.bold && !lines.empty() && lines.front().size() > 5);
            const bool has_room = found.words.size() < most && readable;
            found.all = found.all && whole && has_room;
            if (has_room)
                found.words.push_back({lines.front(), word.bold});
        }
        return found;
    }

    /// In the middle of the place.
    void add_centred(const Rect<Wall>& place, const std::vector<Word>& words, const Paint& plate) {
        const Fitted found = fitted(place, words);
        for (std::size_t i = 0; i < found.words.size(); ++i)
            add_line(place, found.words[i], found.upward, plate,
                     static_cast<double>(i) - static_cast<double>(found.words.size() - 1) / 2);
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
    std::size_t windows_at_ = 0;  ///< Among the shapes, for those to come.
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
