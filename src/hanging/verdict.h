// One verdict on what holds a piece, for every bar and table that speaks of its load.
#pragma once

#include "hanging/fixings.h"

namespace wallwright::hanging {

/// within: it holds, with its margin. over: it is made for this, and bears more than its margin
/// leaves. does_not_hold: there is no fixing, or the hanging's own findings stop it for another
/// reason (no stud, a rough back, strips under too much weight); then its share of a rating says
/// nothing.
enum class Verdict { within, over, does_not_hold };

Verdict verdict_on(const Hanging& hanging);

/// The most of the rating that may be in use: what the margin leaves.
double limit_of(const Hanging& hanging);

inline constexpr const char* kDoesNotHold = "does not hold";

/// "56 %, within 67 %", and with `over` in place of within where it is more; or that it does not
/// hold.
std::string share_words(const Hanging& hanging, const char* over);

}  // namespace wallwright::hanging
