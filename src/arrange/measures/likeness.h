// Whether like hangs by like, judged by what the pieces at hand allow.
#pragma once

#include "arrange/view.h"

namespace wallwright::arrange {

struct Likeness {
    std::size_t alike_neighbours = 0;
    std::size_t neighbours = 0;
    std::size_t alike_pairs = 0;  ///< Of all two pieces, neighbours or not.
    std::size_t pairs = 0;

    /// 1 - share of alike neighbours x share of all pairs that are not alike: where all are alike
    /// nothing better can be had, so nothing is taken off.
    [[nodiscard]] double value() const {
        if (neighbours == 0 || pairs == 0)
            return 1;
        const double found =
            static_cast<double>(alike_neighbours) / static_cast<double>(neighbours);
        const double all = static_cast<double>(alike_pairs) / static_cast<double>(pairs);
        return 1 - found * (1 - all);
    }
};

/// `alike(i, j)` of two spots.
template <class Alike>
Likeness likeness_of(const View& view, const Alike& alike) {
    Likeness found;
    found.neighbours = view.facing().size();
    found.pairs = view.size() * (view.size() - 1) / 2;
    for (const spacing::Facing& pair : view.facing())
        found.alike_neighbours += alike(pair.first, pair.second) ? 1U : 0U;
    if (found.alike_neighbours == 0)
        return found;
    for (std::size_t i = 0; i < view.size(); ++i)
        for (std::size_t j = i + 1; j < view.size(); ++j)
            found.alike_pairs += alike(i, j) ? 1U : 0U;
    return found;
}

}  // namespace wallwright::arrange
