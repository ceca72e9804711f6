#include "desk/bench/card_snap.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <vector>

namespace wallwright::desk {

namespace {

/// A span of the blank in the hand along one axis, and the edges that may hold it.
class Axis {
  public:
    Axis(double at, double length, double reach) : at_(at), length_(length), reach_(reach) {}

    /// Either end of the blank rests at this edge.
    void add_edge(double edge) {
        for (const double at : {edge, edge - length_}) {
            const double off = std::abs(at - at_);
            if (off > reach_ || (holds_ && off >= std::abs(best_ - at_)))
                continue;
            best_ = at;
            holds_ = true;
        }
    }
    [[nodiscard]] bool holds() const { return holds_; }
    [[nodiscard]] double rests_at(double step) const {
        return holds_ ? best_ : std::round(at_ / step) * step;
    }

  private:
    double at_;
    double length_;
    double reach_;
    double best_ = 0;
    bool holds_ = false;
};

double held_inside(double at, double length, double margin, double all) {
    const double last = all - margin - length;
    return last < margin ? at : std::clamp(at, margin, last);
}

}  // namespace

mounts::OnSheet held_inside(const mounts::NestSheet& sheet, mounts::OnSheet place) {
    place.left = held_inside(place.left, place.size.width, sheet.margin, sheet.size.width);
    place.top = held_inside(place.top, place.size.height, sheet.margin, sheet.size.height);
    return place;
}

SheetSpot snap_on_sheet(const mounts::CardLot& lot, std::size_t sheet, std::size_t blank,
                        const mounts::OnSheet& place, double reach, double step) {
    const mounts::CutSheet& cut = lot.plan.sheets[sheet];
    const mounts::NestSheet& kind = lot.task.sheets[cut.sheet];
    Axis across(place.left, place.size.width, reach);
    Axis down(place.top, place.size.height, reach);
    for (const double edge : {kind.margin, kind.size.width - kind.margin})
        across.add_edge(edge);
    for (const double edge : {kind.margin, kind.size.height - kind.margin})
        down.add_edge(edge);
    for (const mounts::PlacedBlank& other : cut.placed) {
        if (other.blank == blank)
            continue;
        for (const double edge : {other.place.left, other.place.left + other.place.size.width})
            across.add_edge(edge);
        for (const double edge : {other.place.top, other.place.top + other.place.size.height})
            down.add_edge(edge);
    }
    return {across.rests_at(step), down.rests_at(step), across.holds(), down.holds()};
}

}  // namespace wallwright::desk
