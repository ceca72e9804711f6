// Whether the hanger on a frame's back can hold it as it should.
#pragma once

#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::hanging {

/// Something wrong with a hanger's measures, in words fit to follow the piece's title and a colon.
struct Misfit {
    wall::Severity severity = wall::Severity::stop;
    double measured = 0;
    double wanted = 0;
    std::string unit;  ///< "mm" or "deg".
    std::string what;
    std::string remedy;
};

/// The sentence of both parts.
std::string to_text(const Misfit& misfit);

/// Everything wrong with a hanger that has all its measures, the worst first. Stops: a bearing that
/// is not above the piece's middle, since it would tip over; rings wider apart than the frame; a
/// cord not longer than its rings are apart, or so long that the hook would stand above the frame;
/// two hooks not nearer to each other than the rings. Mind: a cord flatter than 10 degrees, where a
/// trade chart of wire angles shows nearly three times the weight on each ring (the bound is our
/// choice).
std::vector<Misfit> misfits(const wall::Hanger& complete_hanger, geometry::Size outside,
                            units::LengthUnit unit);

}  // namespace wallwright::hanging
