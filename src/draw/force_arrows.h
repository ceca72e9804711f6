// Forces as arrows: as long as they are strong, each kind with a head of its own, figures apart.
#pragma once

#include "draw/easel.h"
#include "hanging/forces.h"

#include <string>
#include <vector>

namespace wallwright::draw {

/// A force as one view sees it.
struct Arrow {
    hanging::ForceKind kind = hanging::ForceKind::weight;
    Point<geometry::Wall> from;            ///< Where it acts.
    geometry::Vec<geometry::Wall> newton;  ///< Its part in the plane of the view.
    std::string figure;                    ///< May be empty.
};

/// Draws all arrows, `paper_mm` long for each newton (and never too short to be seen), and then a
/// figure beside each, where nothing else is: rather toward `middle`, and on a leader where it
/// has to stand off.
void add_arrows(Easel& easel, const std::vector<Arrow>& arrows, double paper_mm, double middle);

/// mm on paper that the head of an arrow this long takes.
double head_length(double length);

}  // namespace wallwright::draw
