#include "mounts/nest/cut_order.h"

#include <algorithm>
#include <cmath>

namespace wallwright::mounts {

namespace {

double along(const OnSheet& piece, Axis axis) {
    return axis == 0 ? piece.size.width : piece.size.height;
}

/// Cuts off the first `length` along an axis; `piece` becomes the rest.
OnSheet cut_off(CutSheet& sheet, OnSheet& piece, Axis axis, double length) {
    const double from = axis == 0 ? piece.left : piece.top;
    sheet.cuts.push_back({.piece = piece, .upright = axis == 0, .at = from + length});
    OnSheet off = piece;
    (axis == 0 ? off.size.width : off.size.height) = length;
    (axis == 0 ? piece.left : piece.top) += length;
    (axis == 0 ? piece.size.width : piece.size.height) -= length;
    return off;
}

class CutUp {
  public:
    CutUp(const Stock& stock, const SheetTree& tree, CutSheet& sheet)
        : stock_(&stock), tree_(&tree), sheet_(&sheet) {}

    void cut(int index, const OnSheet& place) {
        const SheetTree::Piece& piece = tree_->piece(index);
        if (piece.holds == SheetTree::kFree)
            sheet_->offcuts.push_back(place);
        else if (piece.holds == SheetTree::kCutUp)
            cut_across(index, place);
        else
            sheet_->placed.push_back({.blank = static_cast<std::size_t>(piece.holds),
                                      .place = place,
                                      .turned = is_turned(piece)});
    }

  private:
    void cut_across(int index, OnSheet rest) {
        const Axis axis = tree_->piece(index).axis;
        const std::vector<int> parts = parts_of(index);
        std::vector<OnSheet> places;
        for (std::size_t i = 0; i + 1 < parts.size(); ++i)
            places.push_back(cut_off(*sheet_, rest, axis, length(parts[i], axis)));
        places.push_back(rest);
        for (std::size_t i = 0; i < parts.size(); ++i)
            cut(parts[i], places[i]);
    }

    // The free one last, the others the longest first.
    [[nodiscard]] std::vector<int> parts_of(int index) const {
        std::vector<int> parts;
        const Axis axis = tree_->piece(index).axis;
        for (int part = tree_->piece(index).first; part != SheetTree::kNone;
             part = tree_->piece(part).next)
            parts.push_back(part);
        std::stable_sort(parts.begin(), parts.end(), [&](int a, int b) {
            const bool free_a = tree_->piece(a).holds == SheetTree::kFree;
            const bool free_b = tree_->piece(b).holds == SheetTree::kFree;
            return free_a != free_b ? free_b : length(a, axis) > length(b, axis);
        });
        return parts;
    }

    [[nodiscard]] double length(int piece, Axis axis) const {
        return tree_->piece(piece).extent[static_cast<std::size_t>(axis)];
    }

    [[nodiscard]] bool is_turned(const SheetTree::Piece& piece) const {
        const StockBlank& blank = stock_->blanks[static_cast<std::size_t>(piece.holds)];
        return blank.may_turn && std::abs(piece.extent[0] - blank.extent[0]) >
                                     std::abs(piece.extent[0] - blank.extent[1]);
    }

    const Stock* stock_;
    const SheetTree* tree_;
    CutSheet* sheet_;
};

}  // namespace

OnSheet trim(CutSheet& sheet, const NestSheet& kind) {
    OnSheet piece{.size = kind.size};
    if (kind.margin < geometry::kLengthEps)
        return piece;
    for (const Axis axis : {0, 1})
        cut_off(sheet, piece, axis, kind.margin);
    for (const Axis axis : {0, 1})
        piece = cut_off(sheet, piece, axis, along(piece, axis) - kind.margin);
    return piece;
}

CutSheet cut_up(const NestTask& task, const Stock& stock, const OpenSheet& open) {
    CutSheet sheet{.sheet = open.kind, .placed = {}, .cuts = {}, .offcuts = {}};
    const OnSheet usable = trim(sheet, task.sheets[open.kind]);
    CutUp(stock, open.tree, sheet).cut(0, usable);
    return sheet;
}

}  // namespace wallwright::mounts
