// What the step hang shows: the wall, the pages that will be printed, or one mark at a time on the
// day.
#pragma once

#include <cstdint>

namespace wallwright::desk {

enum class HangView : std::uint8_t { wall, pages, day };

/// What is drawn on the wall in that step, to be switched one by one.
struct HangLayers {
    bool marks = true;
    bool fixings = true;
    bool loads = true;
    bool zones = true;
    bool studs = true;
    bool operator==(const HangLayers&) const = default;
};

}  // namespace wallwright::desk
