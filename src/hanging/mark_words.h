// What the marks mean, in the same words on every paper and in the terminal.
#pragma once

#include "hanging/marks.h"

#include <span>
#include <string>

namespace wallwright::hanging {

/// How the fixing sits on its mark: "Hook: the ring or the cord comes to rest on the cross; ...";
/// "" for strips.
std::string seat_words(wall::FixingKind kind);

/// What a minus before a figure means, where a mark has one: "A minus is back over Kelp, or below
/// its top edge."; else "".
std::string minus_words(const wall::Project& project, std::span<const Mark> marks);

}  // namespace wallwright::hanging
