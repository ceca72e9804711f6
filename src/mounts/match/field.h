// Who takes part when prints are matched to frames, and what each pair would cost.
#pragma once

#include "mounts/match/fitting.h"

#include <optional>
#include <vector>

namespace wallwright::mounts {

struct Place {
    const wall::Piece* piece = nullptr;  ///< Null for a frame that is thought of.
    Holder holder;
};

/// The pointers are into the project.
struct Field {
    std::vector<const wall::Print*> prints;        ///< The rows.
    std::vector<Place> places;                     ///< The columns.
    std::vector<std::optional<Fitting>> fittings;  ///< Row by row; empty where the pair cannot be.
    std::vector<std::optional<std::size_t>> kept;  ///< For each row the column its print stays in.
    CostTable table{0, 0};  ///< In an order of cost first, then fewer prints that move.

    [[nodiscard]] const std::optional<Fitting>& fitting(std::size_t row, std::size_t column) const {
        return fittings[row * places.size() + column];
    }
    /// What the pairs cost in 0.01 points; a kept print that does not fit costs nothing.
    [[nodiscard]] Cost cost_of(const Assignment& assignment) const;
};

/// Every print and every piece but those of mounts with several windows, whose prints stay where
/// they are. A piece that keeps its print is locked to it. A hung or pinned piece is not turned. A
/// piece without a mount may get a new one.
Field field_of(const wall::Project& project);

/// With a frame that is thought of as its last column.
Field with_frame(const Field& field, const wall::Frame& frame);

}  // namespace wallwright::mounts
