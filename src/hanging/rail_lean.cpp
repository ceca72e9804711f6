#include "hanging/rail_lean.h"

#include "base/contract.h"

namespace wallwright::hanging {

double lean_out(const SideView& side) {
    WW_EXPECT(side.cord > 0 && 2 * side.tied > side.height,
              "a piece under a rail is tied above its middle");
    return side.depth / (side.tied / side.cord + 1 - side.height / (2 * side.tied));
}

}  // namespace wallwright::hanging
