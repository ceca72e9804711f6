// The search's own view of a task, and a way to cut it.
#pragma once

#include "mounts/nest/sheet_tree.h"
#include "mounts/nest/task.h"

namespace wallwright::mounts {

/// A blank that fits some sheet.
struct StockBlank {
    Extent extent{};
    Extent turned{};
    bool may_turn = false;  ///< And that makes a difference.
    double area = 0;        ///< mm2.
};

struct StockSheet {
    geometry::Size usable;  ///< Within its margin; may be 0.
    double area = 0;        ///< mm2 of the whole.
    std::size_t count = 0;
    double price = 0;
    bool to_buy = false;
    bool may_turn = true;   ///< Blanks on it.
    bool is_extra = false;  ///< A drop-out, or part of a sheet that is taken: costs nothing.
    bool leaves_offcuts = true;
};

/// Blanks keep their indices of the task; those not in `wanted` fit no sheet.
struct Stock {
    std::vector<StockBlank> blanks;
    std::vector<StockSheet> sheets;
    std::vector<int> wanted;
    std::vector<int> too_large;
};

struct OpenSheet {
    std::size_t kind = 0;  ///< Of the stock's sheets.
    SheetTree tree;
};

struct Packing {
    std::vector<OpenSheet> sheets;
    std::vector<int> unplaced;
};

Stock stock_of(const NestTask& task);

/// True when the blank may lie on an empty sheet of this kind.
bool fits(const StockBlank& blank, const StockSheet& sheet);

}  // namespace wallwright::mounts
