#include "arrange/salon.h"

#include "arrange/score.h"
#include "arrange/settle.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

constexpr std::uint64_t kCycle = 1200;  ///< Tries from hot to cold.
constexpr double kHot = 2.0;            ///< Points of the total that a worse layout may cost.
constexpr double kCold = 0.05;
constexpr double kLeftOutCosts = 100;  ///< More than any layout can gain.
constexpr double kFreshShare = 0.1;    ///< Of the cycles that start over.

void shuffle(std::vector<std::uint32_t>& items, Random& random) {
    for (std::size_t i = items.size(); i > 1; --i)
        std::swap(items[i - 1], items[random.below(i)]);
}

double value_of(double total, std::size_t left_out) {
    return total - kLeftOutCosts * static_cast<double>(left_out);
}

/// The spots that are not fixed, as indices into the layout.
std::vector<std::size_t> loose_spots(const Task& task, const Layout& layout) {
    std::vector<std::size_t> loose;
    for (std::size_t i = 0; i < layout.size(); ++i)
        if (!task.items[layout[i].item].fixed)
            loose.push_back(i);
    return loose;
}

}  // namespace

Salon::Salon(const Task& task, std::uint64_t seed, Layout start)
    : task_(&task),
      random_(seed),
      view_(task),
      set_down_(task),
      free_(free_items(task)),
      any_fixed_(free_.size() < task.items.size()) {
    now_ = start.empty() ? fresh() : judged(std::move(start));
    best_ = now_;
}

Salon::State Salon::fresh() {
    Layout layout = fixed_part(*task_);
    std::vector<std::uint32_t> items = free_;
    set_all_down(layout, items, 0.3);
    return judged(std::move(layout));
}

/// Large ones first, though not always.
void Salon::set_all_down(Layout& layout, std::vector<std::uint32_t>& items, double noise) {
    shuffle(items, random_);
    if (random_.below(2) == 0)
        std::ranges::stable_sort(items, std::greater<>{}, [this](std::uint32_t item) {
            return task_->items[item].size.area();
        });
    for (const std::uint32_t item : items)
        set_down_.add(layout, item, noise, random_);
}

/// Where nothing stays, the group as a whole goes where it is wanted.
Salon::State Salon::judged(Layout layout) {
    State state;
    if (!any_fixed_ && !layout.empty())
        if (std::optional<Layout> settled = settle(*task_, layout))
            layout = std::move(*settled);
    state.left_out = task_->items.size() - layout.size();
    if (!layout.empty()) {
        view_.look(layout);
        state.total = total_of(view_);
    }
    state.layout = std::move(layout);
    return state;
}

Layout Salon::with_some_set_anew() {
    Layout layout = now_.layout;
    const std::vector<std::size_t> loose = loose_spots(*task_, layout);
    std::vector<std::uint32_t> taken = arrange::left_out(*task_, layout);
    if (!loose.empty()) {
        const std::size_t most = std::min<std::size_t>(loose.size(), 2 + loose.size() / 4);
        const std::size_t count = 1 + random_.below(std::min<std::size_t>(most, 8));
        const WallPoint about = layout[loose[random_.below(loose.size())]].place.centre();
        const bool near_each_other = random_.below(2) == 0;
        std::vector<std::pair<double, std::uint32_t>> order;
        for (const std::size_t i : loose)
            order.emplace_back(near_each_other ? geometry::distance(about, layout[i].place.centre())
                                               : random_.uniform(),
                               layout[i].item);
        std::ranges::sort(order);
        for (std::size_t i = 0; i < count; ++i)
            taken.push_back(order[i].second);
        std::erase_if(layout, [&](const Spot& spot) {
            return std::ranges::find(taken, spot.item) != taken.end();
        });
    }
    set_all_down(layout, taken, 0.05);
    return layout;
}

/// Middle on middle or corner on corner, where the rest leaves them room.
std::optional<Layout> Salon::with_two_swapped() {
    Layout layout = now_.layout;
    const std::vector<std::size_t> loose = loose_spots(*task_, layout);
    if (loose.size() < 2)
        return std::nullopt;
    Spot& a = layout[loose[random_.below(loose.size())]];
    Spot& b = layout[loose[random_.below(loose.size())]];
    if (a.item == b.item)
        return std::nullopt;
    const double across = static_cast<double>(random_.below(3)) / 2;
    const double up = static_cast<double>(random_.below(3)) / 2;
    const auto put = [&](const WallRect& old, geometry::Size size) {
        return WallRect::at({old.left() + across * (old.width() - size.width),
                             old.bottom() + up * (old.height() - size.height)},
                            size);
    };
    const WallRect place_a = put(b.place, a.place.size());
    b.place = put(a.place, b.place.size());
    a.place = place_a;
    return is_allowed(*task_, layout) ? std::optional(layout) : std::nullopt;
}

Layout Salon::neighbour() {
    if (random_.below(4) == 0)
        if (std::optional<Layout> swapped = with_two_swapped())
            return std::move(*swapped);
    return with_some_set_anew();
}

double Salon::temperature() const {
    const double cooled = static_cast<double>(tries_ % kCycle) / static_cast<double>(kCycle);
    return kHot * std::pow(kCold / kHot, cooled);
}

bool Salon::takes(const State& next) {
    const double loss = value_of(now_.total, now_.left_out) - value_of(next.total, next.left_out);
    return loss <= 0 || random_.uniform() < std::exp(-loss / temperature());
}

void Salon::begin_cycle() {
    now_ = random_.uniform() < kFreshShare ? fresh() : best_;
}

void Salon::run(std::uint64_t tries) {
    for (std::uint64_t i = 0; i < tries && !free_.empty(); ++i) {
        if (tries_ > 0 && tries_ % kCycle == 0)
            begin_cycle();
        State next = judged(neighbour());
        if (takes(next))
            now_ = std::move(next);
        if (value_of(now_.total, now_.left_out) > value_of(best_.total, best_.left_out))
            best_ = now_;
        ++tries_;
    }
}

}  // namespace wallwright::arrange
