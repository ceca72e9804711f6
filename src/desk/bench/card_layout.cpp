#include "desk/bench/card_layout.h"

#include "draw/card_sheet.h"
#include "draw/labels.h"
#include "mounts/card/plan_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Size;
using geometry::Wall;
using mounts::CardLot;
using mounts::CardPlan;

// All in mm on paper.
constexpr double kHeading = 12;     // for the two lines of words over a card's sheets
constexpr double kHeadingUp = 7.4;  // of the upper base line over the sheets
constexpr double kHeadingSize = 2.5;
constexpr double kSmall = 1.8;
constexpr double kChip = 5;   // what stands before the words
constexpr double kLeft = 11;  // beside a sheet, for its height
constexpr double kRight = 4;
constexpr double kGrainRight = 11;  // the same with the arrow of a grain
constexpr double kUnder = 17;       // for its width and its title
constexpr double kBeside = 5;       // between two cards
constexpr double kBelow = 3;

constexpr double kLeast = 0.005;  // mm on paper for a mm
constexpr double kMost = 0.6;

Size sheet_size(const CardLot& lot, std::size_t sheet) {
    return lot.task.sheets[lot.plan.sheets[sheet].sheet].size;
}

double right_of(const CardLot& lot, std::size_t sheet) {
    return lot.task.sheets[lot.plan.sheets[sheet].sheet].has_grain ? kGrainRight : kRight;
}

double words_width(const CardPlan& plan, std::size_t lot) {
    return kLeft +
           std::max(kChip + draw::estimated_width(card_title(plan, lot), kHeadingSize, true),
                    draw::estimated_width(mounts::sum_words(plan.lots[lot]), kSmall));
}

using OnPaper = Point<geometry::Page>;

/// Boxes one beside the other in rows of a width, mm on paper, y down.
class Shelves {
  public:
    Shelves(double width, double below) : width_(width), below_(below) {}

    /// The box's upper left corner.
    OnPaper add(Size size, double beside) {
        if (x_ > 0 && x_ + size.width > width_) {
            y_ += row_ + below_;
            x_ = 0;
            row_ = 0;
        }
        const OnPaper corner{x_, y_};
        widest_ = std::max(widest_, x_ + size.width);
        x_ += size.width + beside;
        row_ = std::max(row_, size.height);
        return corner;
    }
    [[nodiscard]] Size size() const { return {widest_, y_ + row_}; }

  private:
    double width_;
    double below_;
    double x_ = 0;
    double y_ = 0;
    double row_ = 0;
    double widest_ = 0;
};

/// One card: its words and its sheets, from its own upper left corner.
struct Block {
    std::vector<OnPaper> sheets;  ///< Corners of the cards themselves.
    Size size;
};

Block block_of(const CardLot& lot, double words, double scale, double width) {
    Block block;
    Shelves shelves(width, 0);
    for (std::size_t i = 0; i < lot.plan.sheets.size(); ++i) {
        const Size size = sheet_size(lot, i);
        const OnPaper corner = shelves.add(
            {kLeft + scale * size.width + right_of(lot, i), scale * size.height + kUnder}, 0);
        block.sheets.push_back({corner.x + kLeft, corner.y + kHeading});
    }
    block.size = {std::max(words, shelves.size().width), kHeading + shelves.size().height};
    return block;
}

struct Laid {
    std::vector<Block> blocks;
    std::vector<OnPaper> corners;
    Size size;
};

Laid laid(const CardPlan& plan, const std::vector<double>& words, double scale, double width) {
    Laid all;
    Shelves shelves(width, kBelow);
    for (std::size_t i = 0; i < plan.lots.size(); ++i) {
        all.blocks.push_back(block_of(plan.lots[i], words[i], scale, width));
        all.corners.push_back(shelves.add(all.blocks.back().size, kBeside));
    }
    all.size = shelves.size();
    return all;
}

double scale_for(const CardPlan& plan, const std::vector<double>& words, Size paper) {
    constexpr int kHalvings = 24;
    double low = std::log(kLeast);
    double high = std::log(kMost);
    for (int i = 0; i < kHalvings; ++i) {
        const double middle = (low + high) / 2;
        const Size size = laid(plan, words, std::exp(middle), paper.width).size;
        (size.width <= paper.width && size.height <= paper.height ? low : high) = middle;
    }
    return std::exp(low);
}

std::string sheet_title(const CardLot& lot, std::size_t sheet) {
    const std::size_t kind = lot.plan.sheets[sheet].sheet;
    const mounts::SheetOrigin& origin = lot.origins[kind];
    if (origin.drop_out)
        return origin.title;
    std::size_t number = 0;
    std::size_t count = 0;
    for (std::size_t i = 0; i < lot.plan.sheets.size(); ++i)
        if (lot.plan.sheets[i].sheet == kind) {
            ++count;
            if (i <= sheet)
                ++number;
        }
    std::string title = origin.title;
    if (count > 1)
        title += fmt::format(" ({} of {})", number, count);
    if (lot.task.sheets[kind].to_buy)
        title += ", to buy";
    return title;
}

}  // namespace

const LaidSheet* CardLayout::find(const SheetAt& at) const {
    const auto found = std::ranges::find(sheets, at, &LaidSheet::at);
    return found == sheets.end() ? nullptr : &*found;
}

CardLayout lay_out_card(const CardPlan& plan, Size paper) {
    std::vector<double> words;
    for (std::size_t i = 0; i < plan.lots.size(); ++i)
        words.push_back(words_width(plan, i));
    CardLayout layout;
    layout.scale = scale_for(plan, words, paper);
    const double unit = 1 / layout.scale;
    const Laid all = laid(plan, words, layout.scale, paper.width);
    for (std::size_t l = 0; l < plan.lots.size(); ++l) {
        const OnPaper at = all.corners[l];
        layout.headings.push_back({l,
                                   {(at.x + kLeft) * unit, -(at.y + kHeading - kHeadingUp) * unit},
                                   card_title(plan, l),
                                   mounts::sum_words(plan.lots[l])});
        for (std::size_t i = 0; i < plan.lots[l].plan.sheets.size(); ++i) {
            const OnPaper corner = all.blocks[l].sheets[i];
            const Size size = sheet_size(plan.lots[l], i);
            layout.sheets.push_back(
                {{l, i},
                 Rect<Wall>::at({(at.x + corner.x) * unit, -(at.y + corner.y) * unit - size.height},
                                size),
                 sheet_title(plan.lots[l], i)});
        }
    }
    layout.extent = {{0, -std::max(all.size.height, 1.0) * unit},
                     {std::max(all.size.width, 1.0) * unit, 0}};
    return layout;
}

std::string card_title(const CardPlan& plan, std::size_t lot) {
    return fmt::format("Card {}: {}", lot + 1, mounts::card_name(plan.lots[lot], plan.unit));
}

std::vector<LaidBlank> blanks_of(const CardPlan& plan, const CardLayout& layout) {
    std::vector<LaidBlank> blanks;
    for (const LaidSheet& sheet : layout.sheets) {
        const CardLot& lot = plan.lots[sheet.at.lot];
        for (const mounts::PlacedBlank& placed : lot.plan.sheets[sheet.at.sheet].placed)
            blanks.push_back({sheet.at, placed.blank,
                              draw::in_card_sheet(lot, sheet.at.sheet, placed.place)
                                  .moved({sheet.place.min.x, sheet.place.min.y}),
                              placed.turned});
    }
    return blanks;
}

}  // namespace wallwright::desk
