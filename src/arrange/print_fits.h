// Which prints would go into a frame.
#pragma once

#include "arrange/suggest.h"

#include <vector>

namespace wallwright::arrange {

/// mm of mount that must be seen on every side; less looks like a slip of the knife (common
/// practice for small prints, no source; teachers and framers ask for 50 mm and more on larger
/// ones).
inline constexpr double kLeastBorder = 25;
/// mm by which a print that fills the frame without a mount may be smaller than its rebate: the lip
/// covers as much.
inline constexpr double kFillsWithin = 6;

/// Prints of waiting pieces and of no piece that go into this frame as it hangs: with a mount of
/// the usual overlap, every border seen at least kLeastBorder, or filling it without one. At most
/// `most`, the best first: those that fill it, then those whose borders are nearest to even and to
/// 60 mm.
std::vector<PrintFit> fitting_prints(const wall::Project& project, const wall::Frame& frame,
                                     std::size_t most);

/// How well the fit looks, 0 to 1; 1 for a print that fills the frame.
double fit_worth(const wall::Project& project, const wall::Frame& frame, const PrintFit& fit);

}  // namespace wallwright::arrange
