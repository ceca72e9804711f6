// Measures as Ngo, Teo and Byrne published them (Modelling interface aesthetics, Information
// Sciences 152, 2003), where the program has others instead: to hold the two against each other.
#pragma once

#include "arrange/task.h"

namespace wallwright::published {

using arrange::Layout;
using arrange::WallRect;

double equilibrium(const Layout& layout, const WallRect& frame);
double regularity(const Layout& layout);
double density(const Layout& layout, const WallRect& frame);
double homogeneity(const Layout& layout, const WallRect& frame);

}  // namespace wallwright::published
