#include "mounts/nest/rebuild.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

constexpr std::uint64_t kStepsARound = 256;
// Burke, Bykov, The late acceptance hill-climbing heuristic, EJOR 258 (2017): a step is taken when
// it is no worse than what was so many steps ago. The length is our own.
constexpr std::size_t kHistory = 150;
constexpr std::uint64_t kPatience = 30000;  // steps without anything better before a fresh start
constexpr double kSquares = 0.1;  // what large free pieces weigh beside the area of blanks unplaced
constexpr double kBlink = 0.02;   // share of free pieces overlooked
constexpr std::uint64_t kMostRuins = 4;

double square(double x) {
    return x * x;
}

}  // namespace

Rebuild::Rebuild(const Stock& stock, Packing start, RebuildGoal goal, std::uint64_t seed)
    : stock_(&stock), goal_(goal), random_(seed), now_(std::move(start)) {
    unit_ = 1;
    for (const OpenSheet& sheet : now_.sheets) {
        unit_ = std::max(unit_, sheet.tree.area());
        copies_.push_back(sheet.tree);
    }
    is_copied_.assign(now_.sheets.size(), false);
    if (goal_ == RebuildGoal::place_all)
        recreate();
    now_cost_ = cost();
    history_.assign(kHistory, now_cost_);
    best_ = now_;
    best_rank_ = rank();
}

double Rebuild::cost() const {
    double unplaced = 0;
    for (const int blank : now_.unplaced)
        unplaced += stock_->blanks[static_cast<std::size_t>(blank)].area;
    double squares = 0;
    for (const OpenSheet& sheet : now_.sheets)
        for (const int piece : sheet.tree.free())
            squares += square(sheet.tree.area_of(piece) / unit_);
    const bool places = goal_ == RebuildGoal::place_all;
    const double weight = places ? kSquares / static_cast<double>(now_.sheets.size()) : 1;
    return (places ? 1 : 1000) * unplaced / unit_ - weight * squares;
}

// By which the best is kept.
double Rebuild::rank() const {
    double largest = 0;
    if (goal_ == RebuildGoal::place_all)
        return cost();
    for (const OpenSheet& sheet : now_.sheets)
        if (stock_->sheets[sheet.kind].leaves_offcuts)
            for (const int piece : sheet.tree.free())
                largest = std::max(largest, sheet.tree.area_of(piece) / unit_);
    return now_.unplaced.empty() ? -largest : 1;
}

Rules Rebuild::any_rules() {
    const bool by_squares = random_.below(2) == 0;
    return {.fit = by_squares ? Fit::squares : static_cast<Fit>(random_.below(kFits)),
            .split = by_squares ? Split::squares : static_cast<Split>(random_.below(kSplits)),
            .order = static_cast<Order>(random_.below(kOrders)),
            .blink = kBlink};
}

// One that is not free; kNone when all is.
int Rebuild::any_piece(const SheetTree& tree) {
    if (tree.is_empty())
        return SheetTree::kNone;
    while (true) {
        const int piece = static_cast<int>(random_.below(tree.pieces().size()));
        const int holds = tree.piece(piece).holds;
        if (holds >= 0 || (holds == SheetTree::kCutUp && (piece != 0 || random_.below(4) == 0)))
            return piece;
    }
}

std::size_t Rebuild::any_sheet() {
    return random_.below(now_.sheets.size());
}

void Rebuild::keep_copy(std::size_t sheet) {
    if (is_copied_[sheet])
        return;
    copies_[sheet] = now_.sheets[sheet].tree;
    is_copied_[sheet] = true;
    copied_.push_back(sheet);
}

void Rebuild::undo() {
    for (const std::size_t sheet : copied_)
        std::swap(copies_[sheet], now_.sheets[sheet].tree);
    std::swap(unplaced_before_, now_.unplaced);
}

void Rebuild::ruin() {
    const std::uint64_t ruins = 1 + random_.below(kMostRuins);
    for (std::uint64_t i = 0; i < ruins; ++i) {
        const std::size_t sheet = any_sheet();
        SheetTree& tree = now_.sheets[sheet].tree;
        const int piece = any_piece(tree);
        if (piece == SheetTree::kNone)
            continue;
        keep_copy(sheet);
        tree.remove(piece, now_.unplaced);
    }
}

void Rebuild::recreate() {
    const Rules rules = any_rules();
    std::vector<int> blanks = std::move(now_.unplaced);
    now_.unplaced.clear();
    sort_by(*stock_, blanks, rules.order, random_);
    for (const int blank : blanks) {
        const CutSpot spot = best_spot(*stock_, now_, blank, rules, random_);
        if (spot.piece == SheetTree::kNone) {
            now_.unplaced.push_back(blank);
            continue;
        }
        keep_copy(spot.sheet);
        take(*stock_, now_, blank, spot);
    }
}

// From nothing, in an order of its own.
void Rebuild::restart() {
    for (OpenSheet& sheet : now_.sheets)
        sheet.tree.clear(now_.unplaced);
    recreate();
    now_cost_ = cost();
    history_.assign(kHistory, now_cost_);
    since_better_ = 0;
}

void Rebuild::step() {
    for (const std::size_t sheet : copied_)
        is_copied_[sheet] = false;
    copied_.clear();
    unplaced_before_ = now_.unplaced;
    ruin();
    recreate();
    const double next = cost();
    double& old = history_[steps_++ % kHistory];
    ++since_better_;
    if (next > now_cost_ && next > old) {
        undo();
    } else {
        now_cost_ = next;
        if (const double found = rank(); found < best_rank_ - 1e-12) {
            best_ = now_;
            best_rank_ = found;
            since_better_ = 0;
        }
    }
    old = now_cost_;
}

std::uint64_t Rebuild::rounds_since_better() const {
    return since_better_ / kStepsARound;
}

void Rebuild::round() {
    if (now_.sheets.empty())
        return;
    for (std::uint64_t i = 0; i < kStepsARound && !is_done(); ++i)
        step();
    if (since_better_ > kPatience && goal_ == RebuildGoal::place_all)
        restart();
}

}  // namespace wallwright::mounts
