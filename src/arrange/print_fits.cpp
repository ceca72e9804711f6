#include "arrange/print_fits.h"

#include "mounts/window.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace wallwright::arrange {

namespace {

using wall::Frame;
using wall::Print;
using wall::Project;

constexpr double kUsualBorder = 60;  // mm; twice a moulding of 30, framers' practice, no source

bool is_at_hand(const Project& project, const Print& print) {
    return std::ranges::none_of(project.pieces, [&print](const wall::Piece& piece) {
        return piece.print == print.id && piece.state != wall::PieceState::waiting;
    });
}

mounts::Borders seen_borders(const Frame& frame, const Print& print) {
    return mounts::plan_mount(frame, wall::Mount{}, print).seen;
}

double narrowest(const mounts::Borders& seen) {
    return std::min({seen.left, seen.right, seen.top, seen.bottom});
}

double widest(const mounts::Borders& seen) {
    return std::max({seen.left, seen.right, seen.top, seen.bottom});
}

/// The print lies in the rebate, and the lip covers its edges.
bool fills(const Frame& frame, const Print& print) {
    const geometry::Size rebate = mounts::blank_size(frame);
    const auto one_way = [&frame](double sheet, double room) {
        return sheet <= room + geometry::kLengthEps &&
               sheet >= room - std::min(kFillsWithin, 2 * frame.rebate_width);
    };
    return one_way(print.size.width, rebate.width) && one_way(print.size.height, rebate.height);
}

std::optional<PrintFit> fit_of(const Frame& frame, const Print& print) {
    if (fills(frame, print))
        return PrintFit{print.id, false, 0};
    const double border = narrowest(seen_borders(frame, print));
    if (border < kLeastBorder)
        return std::nullopt;
    return PrintFit{print.id, true, border};
}

}  // namespace

double fit_worth(const Project& project, const Frame& frame, const PrintFit& fit) {
    const Print* print = find(project, fit.print);
    if (!fit.with_mount || print == nullptr)
        return 1;
    const mounts::Borders seen = seen_borders(frame, *print);
    const double uneven = widest(seen) / narrowest(seen);
    const double off = std::abs(std::log(narrowest(seen) / kUsualBorder));
    return std::max(0.0, 1 - 0.35 * (uneven - 1)) * std::exp(-off * off);
}

std::vector<PrintFit> fitting_prints(const Project& project, const Frame& frame, std::size_t most) {
    std::vector<PrintFit> fits;
    for (const Print& print : project.prints)
        if (is_at_hand(project, print))
            if (const std::optional<PrintFit> fit = fit_of(frame, print))
                fits.push_back(*fit);
    std::ranges::stable_sort(fits, std::greater<>{},
                             [&](const PrintFit& fit) { return fit_worth(project, frame, fit); });
    fits.resize(std::min(most, fits.size()));
    return fits;
}

}  // namespace wallwright::arrange
