// A piece and the forces on it from the front and from the side.
#pragma once

#include "draw/easel.h"
#include "hanging/forces.h"

namespace wallwright::draw {

/// The frame from the front, its lower left corner the origin, with its cord.
void add_front_view(Easel& easel, const hanging::FreeBody& body, double paper_mm);

/// To the right of `left`: the wall, and the frame from its side, deeper than it is where it would
/// be too thin to see. Forces at one height are drawn as one.
void add_side_view(Easel& easel, const hanging::FreeBody& body, double paper_mm, double left);

/// mm on paper for each newton, so that the strongest force is an arrow that both views have room
/// for.
double paper_mm_per_newton(const hanging::FreeBody& body, double scale);

}  // namespace wallwright::draw
