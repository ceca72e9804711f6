#include "desk/bench/match_layout.h"

#include "desk/bench/drawer_grid.h"
#include "desk/bench/match_moves.h"
#include "draw/labels.h"
#include "mounts/window.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <numeric>
#include <set>
#include <vector>

namespace wallwright::desk {

namespace {

using geometry::Size;
using wall::PieceId;
using wall::PrintId;
using wall::Project;

std::string size_words(Size size, units::LengthUnit unit) {
    return fmt::format("{} × {}", units::format_number(size.width, unit),
                       units::format_number(size.height, unit));
}

GridItem item_of(const Project& project, const wall::Print& print) {
    GridItem item;
    item.print = print.id;
    item.size = print.size;
    item.title = title_of(project, print.id);
    item.words = size_words(print.size, project.unit);
    return item;
}

GridItem item_of(const Project& project, const wall::Piece& piece) {
    GridItem item;
    item.piece = piece.id;
    item.size = wall::outside_size(project, piece);
    item.title = frame_title(project, piece.id);
    item.words = fmt::format(
        "takes {}",
        size_words(mounts::blank_size(mounts::as_hung(frame_of(project, piece), piece.turned)),
                   project.unit));
    return item;
}

bool has_several_windows(const Project& project, const wall::Piece& piece) {
    const wall::Mount* mount = piece.mount ? find(project, *piece.mount) : nullptr;
    return mount != nullptr && !mount->openings.empty();
}

bool has_window(const Project& project, const PrintId& print) {
    return std::ranges::any_of(project.pieces, [&](const wall::Piece& piece) {
        return has_several_windows(project, piece) &&
               std::ranges::count(find(project, *piece.mount)->openings, print,
                                  &wall::Opening::print) > 0;
    });
}

const char* why_left(const mounts::Match& match, const PrintId& id) {
    const auto left = std::ranges::find(match.left_prints, id, &mounts::LeftPrint::print);
    if (left == match.left_prints.end())
        return "new";
    return left->fits_none ? "no frame here suits it" : "every frame that suits it is taken";
}

/// Those of pairs first, in their order.
void add_pairs(GridTask& task, const Project& project, const mounts::Match& match,
               std::set<PrintId>& prints, std::set<PieceId>& pieces) {
    for (const mounts::Pair& pair : match.pairs) {
        const wall::Print* print = find(project, pair.print);
        const wall::Piece* piece = find(project, pair.piece);
        if (print == nullptr || piece == nullptr)
            continue;
        task.left.main.push_back(item_of(project, *print));
        task.right.main.push_back(item_of(project, *piece));
        prints.insert(pair.print);
        pieces.insert(pair.piece);
    }
}

void add_rest(GridTask& task, const Project& project, const mounts::Match& match) {
    std::set<PrintId> prints;
    std::set<PieceId> pieces;
    add_pairs(task, project, match, prints, pieces);
    for (const wall::Print& print : project.prints)
        if (!prints.contains(print.id)) {
            GridItem& item = task.left.rest.emplace_back(item_of(project, print));
            item.remark = has_window(project, print.id) ? "in a mount with several windows"
                                                        : why_left(match, print.id);
        }
    for (const wall::Piece& piece : project.pieces)
        if (!pieces.contains(piece.id)) {
            GridItem& item = task.right.rest.emplace_back(item_of(project, piece));
            item.remark = has_several_windows(project, piece) ? "its mount has several windows"
                                                              : "no print suits it better";
        }
}

/// Large ones first, so that those of one row are much alike and the rows are low.
void put_in_order(GridTask& task) {
    const auto height = [&task](std::size_t i) {
        return std::max(task.left.main[i].size.height, task.right.main[i].size.height);
    };
    std::vector<std::size_t> order(task.left.main.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, std::greater{}, height);
    const GridTask before = task;
    for (std::size_t i = 0; i < order.size(); ++i) {
        task.left.main[i] = before.left.main[order[i]];
        task.right.main[i] = before.right.main[order[i]];
    }
    const auto own_height = [](const GridItem& item) { return item.size.height; };
    std::ranges::stable_sort(task.left.rest, std::greater{}, own_height);
    std::ranges::stable_sort(task.right.rest, std::greater{}, own_height);
}

GridTask task_of(const Project& project, const Matched* found) {
    GridTask task;
    if (found != nullptr) {
        add_rest(task, project, found->match);
        put_in_order(task);
        return task;
    }
    for (const wall::Print& print : project.prints)
        task.left.main.push_back(item_of(project, print));
    for (const wall::Piece& piece : project.pieces)
        task.right.main.push_back(item_of(project, piece));
    return task;
}

}  // namespace

const BoardItem* MatchLayout::find(const PrintId& print) const {
    const auto found = std::ranges::find(prints.items, std::optional(print), &BoardItem::print);
    return found == prints.items.end() ? nullptr : &*found;
}

const BoardItem* MatchLayout::find(const PieceId& piece) const {
    const auto found = std::ranges::find(frames.items, std::optional(piece), &BoardItem::piece);
    return found == frames.items.end() ? nullptr : &*found;
}

MatchLayout lay_out_match(const Project& project, const Matched* found, Size paper) {
    const GridTask task = task_of(project, found);
    MatchLayout layout = lay_out_grids(task, paper);
    layout.prints.heading = fmt::format("Prints ({})", project.prints.size());
    layout.frames.heading = fmt::format("Frames ({})", project.pieces.size());
    return layout;
}

}  // namespace wallwright::desk
