// What a match says to a person.
#pragma once

#include "mounts/match/match.h"

#include <string>

namespace wallwright::mounts {

/// "12.5 points", "1 point".
std::string points_text(Cost cost);

std::string pair_text(const wall::Project& project, const Pair& pair);
std::string alternative_text(const wall::Project& project, const wall::PrintId& print,
                             const Alternative& alternative, Cost total_now);
std::string left_text(const wall::Project& project, const LeftPrint& left);
std::string left_text(const wall::Project& project, const LeftPiece& left);
std::string one_more_text(const wall::Project& project, const OneMore& one);

}  // namespace wallwright::mounts
