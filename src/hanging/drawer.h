// The fixings in stock while they are being given out.
#pragma once

#include "wall/project.h"

#include <map>
#include <vector>

namespace wallwright::hanging {

class Drawer {
  public:
    explicit Drawer(const std::vector<wall::Stock>& stock);

    [[nodiscard]] int left(const wall::FixingTypeId& type) const;
    /// Takes up to `wanted` of them; gives how many there were.
    int take(const wall::FixingTypeId& type, int wanted);

  private:
    std::map<wall::FixingTypeId, int> left_;
};

}  // namespace wallwright::hanging
