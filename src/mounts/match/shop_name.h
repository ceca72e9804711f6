// What a shop calls a size.
#pragma once

#include <string>

namespace wallwright::mounts {

/// "A3", "letter", "4 × 6 in" for a catalogue's "a3", "letter", "4x6in"; other names stay.
std::string shop_name(const std::string& size_name);

}  // namespace wallwright::mounts
