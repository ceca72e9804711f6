#include "mounts/card/card_plan.h"
#include "mounts/card/lots.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::mounts {

namespace {

using wall::CardSheet;

void count_used(AfterCutting& after, const wall::CardSheetId& sheet) {
    const auto found =
        std::find_if(after.used.begin(), after.used.end(),
                     [&sheet](const AfterCutting::Used& used) { return used.sheet == sheet; });
    if (found == after.used.end())
        after.used.push_back({sheet, 1});
    else
        found->count += 1;
}

/// "Cream, 420 x 300 mm"; the size that an offcut's title ends on gives way to the new one.
std::string title_for(const std::string& of, geometry::Size whole, geometry::Size left,
                      units::LengthUnit unit) {
    return fmt::format("{}, {}", without_size(of, whole, unit), size_text(left, unit));
}

class Leftovers {
  public:
    Leftovers(AfterCutting& after, units::LengthUnit unit) : after_(&after), unit_(unit) {}

    void add(const CardLot& lot, const std::string& of, const NestSheet& whole,
             geometry::Size size) {
        if (std::min(size.width, size.height) < kOffcutLeast - geometry::kLengthEps)
            return;
        CardSheet left;
        left.title = title_for(of, whole.size, size, unit_);
        left.size = size;
        left.card = lot.card;
        left.colour = lot.colour;
        left.offcut = true;
        left.grain = whole.has_grain ? wall::Grain::upright : wall::Grain::none;
        const auto same =
            std::find_if(after_->left.begin(), after_->left.end(), [&left](const CardSheet& other) {
                CardSheet one = other;
                one.count = left.count;
                return one == left;
            });
        if (same == after_->left.end())
            after_->left.push_back(std::move(left));
        else
            same->count += 1;
    }

  private:
    AfterCutting* after_;
    units::LengthUnit unit_;
};

void add_sheets(AfterCutting& after, Leftovers& leftovers, const CardLot& lot) {
    for (const CutSheet& sheet : lot.plan.sheets) {
        const SheetOrigin& origin = lot.origins[sheet.sheet];
        if (origin.id)
            count_used(after, *origin.id);
        const std::string of = origin.id || origin.drop_out ? origin.title : "offcut";
        for (const OnSheet& offcut : sheet.offcuts)
            leftovers.add(lot, of, lot.task.sheets[sheet.sheet], offcut.size);
    }
}

/// Of windows that are cut, as far as nothing was made of what drops out of them.
void add_drop_outs(Leftovers& leftovers, const CardLot& lot) {
    std::vector<bool> gone(lot.windows.size(), false);
    for (const CutSheet& sheet : lot.plan.sheets)
        if (const auto window = lot.origins[sheet.sheet].window)
            gone[*window] = true;
    const bool has_grain = std::any_of(lot.task.sheets.begin(), lot.task.sheets.end(),
                                       [](const NestSheet& sheet) { return sheet.has_grain; });
    for (std::size_t i = 0; i < lot.windows.size(); ++i) {
        const LotWindow& window = lot.windows[i];
        const auto& left_out = lot.plan.left_out;
        const bool is_cut =
            std::find(left_out.begin(), left_out.end(), window.blank) == left_out.end();
        if (is_cut && !gone[i])
            leftovers.add(lot, title_of_drop_out(lot, i),
                          {.id = "", .size = window.place.size, .has_grain = has_grain},
                          window.place.size);
    }
}

}  // namespace

AfterCutting after_cutting(const CardPlan& plan) {
    AfterCutting after;
    Leftovers leftovers(after, plan.unit);
    for (const CardLot& lot : plan.lots) {
        add_sheets(after, leftovers, lot);
        add_drop_outs(leftovers, lot);
    }
    after.cut = pieces_cut(plan.lots);
    return after;
}

}  // namespace wallwright::mounts
