// How few sheets no plan can go below.
#pragma once

#include "mounts/nest/packing.h"

namespace wallwright::mounts {

/// The area bound: the largest sheets first, until they have the area of the blanks.
std::size_t area_bound(const Stock& stock);

/// Dual feasible functions u^k, U^eps and phi^eps (Fekete, Schepers, New classes of fast lower
/// bounds for bin packing problems, Math. Program. 91, 2001, and A general framework for bounds for
/// higher-dimensional orthogonal packing problems, Math. Methods Oper. Res. 60, 2004), one over
/// each axis; a blank that may turn counts with the lesser of its two ways. Sheets of several
/// sizes: as if all were as wide as the widest and as high as the highest; blanks that fit a
/// drop-out do not count.
std::size_t dual_feasible_bound(const Stock& stock);

/// The larger of the two. Whether by straight cuts or not, no plan has fewer sheets.
std::size_t sheet_bound(const Stock& stock);

}  // namespace wallwright::mounts
