#include "hanging/mark_cord.h"

#include "hanging/bearing.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

constexpr double kCordMeasured = 2;     // mm
constexpr double kKnotsAndStretch = 3;  // mm

/// Of a taut cord, between rings `run` apart with `length` of cord between them.
double drop_of(double run, double length) {
    return std::sqrt(std::max(0.0, (length - run) * (length + run))) / 2;
}

}  // namespace

double cord_error(const wall::Project& project, const Mark& mark) {
    using wall::HangerType;
    const wall::Piece* piece = find(project, mark.piece);
    const auto place = piece == nullptr ? std::nullopt : place_of(project, *piece);
    if (!place || mark.kind == MarkKind::corner)
        return 0;
    const double knots = mark.kind == MarkKind::rail ? kKnotsAndStretch : 0;
    const HangerType type = piece->hanger.type;
    if (type != HangerType::cord_one_hook && type != HangerType::cord_two_hooks)
        return knots;
    const wall::Hanger hanger = complete(piece->hanger, place->size());
    const double hooks = type == HangerType::cord_two_hooks ? *hanger.hook_spacing : 0;
    const double run = *hanger.ring_spacing - hooks;
    const double length = *hanger.cord_length - hooks;
    const double drop = drop_of(run, length);
    const double off = std::max(drop_of(run, length + kCordMeasured) - drop,
                                drop - drop_of(run, length - kCordMeasured));
    return std::hypot(knots, off);
}

}  // namespace wallwright::hanging
