// One piece more in a layout: which of the places that it could touch at is best.
#pragma once

#include "arrange/view.h"
#include "base/random.h"

#include <vector>

namespace wallwright::arrange {

/// Sets pieces down one by one. Keeps its scratch between calls, so the search makes one and uses
/// it on.
class SetDown {
  public:
    explicit SetDown(const Task& task) : task_(&task), view_(task) {}

    /// Adds the item where it touches what is there and looks best; on an empty wall at the wanted
    /// centre. `noise` makes the choice less strict: 0 none, 1 nearly any. False when there is no
    /// place.
    bool add(Layout& layout, std::uint32_t item, double noise, Random& random);

  private:
    struct Offer {
        double worth = 0;
        WallRect place;
    };
    void judge_offers(const Layout& layout, double noise, Random& random);

    const Task* task_;
    View view_;
    std::vector<WallRect> places_;
    std::vector<Offer> offers_;
};

/// How well the place goes with the layout, seen from near by: exact gaps and lines in common with
/// those it would face, against gaps that are off and the room that the group would grow by.
double worth_of(const Task& task, const Layout& layout, const WallRect& place);

}  // namespace wallwright::arrange
