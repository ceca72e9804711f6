// Adhesive strips on a frame's back: how many, where, and the pull that tries to peel the top ones.
#pragma once

#include "hanging/bearing.h"

#include <vector>

namespace wallwright::hanging {

/// The most pairs that one piece gets. Packets speak of four large pairs for 7 kg; with the usual
/// margin of 1.5 that takes six (common practice, no source). A piece that asks for more needs a
/// stronger kind.
inline constexpr int kMostPairs = 6;

/// Pairs needed so that rated x pairs >= margin x mass; at least 2 (one at each top corner).
/// `rated` is more than nothing.
int pairs_needed(Kilograms mass, Kilograms rated, double margin);

/// Pull off the wall at the top pairs together: F = W x / h. `x`: centre of gravity from the wall
/// (half the depth), `h`: the top pairs' middle above the frame's lower edge, more than 0, mm;
/// moments about the lower edge.
Newtons top_pull(Newtons weight, double x, double h);

/// The part of the weight that one strip bears along the wall.
struct Share {
    double down = 0;
    double right = 0;
};

/// Of strips with their middles at these points, as a stiff frame on equal, yielding fastenings
/// hands its weight to them: even shares where they lie about its middle, and a turn about their
/// own middle where they do not (the elastic method for groups of bolts out of line with their
/// load: textbooks of steel construction, from memory).
std::vector<Share> shares_of(const std::vector<BackPoint>& middles, geometry::Size outside);

/// The back of a frame as a strip meets it.
struct FrameBack {
    geometry::Size outside;     ///< mm, as the piece hangs.
    double moulding_width = 0;  ///< mm
};

/// Upright strips along the outer edges of the moulding's back, 3 mm inside them where there is
/// room so that they are not seen (our choice): top corners first, then bottom corners, then down
/// the sides; fewer than asked when no more fit so without overlapping. Points are the strips'
/// middles. A strip wider than the moulding is laid out all the same: that it cannot
/// lie flat is for the caller to say.
std::vector<BackPoint> lay_out(int pairs, geometry::Size footprint, const FrameBack& back);

}  // namespace wallwright::hanging
