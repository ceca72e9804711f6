// A flat sheet of some material: glass, board, card.
#pragma once

#include "wall/ids.h"
#include "wall/unknown.h"

namespace wallwright::wall {

/// A thickness of 0 means there is none.
struct Layer {
    MaterialId material;
    double thickness = 0;  ///< mm
    UnknownKeys unknown = {};
    bool operator==(const Layer&) const = default;
};

}  // namespace wallwright::wall
