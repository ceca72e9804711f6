// Tasks and layouts laid by hand, for what measures and scores say of them.
#pragma once

#include "arrange/score.h"

#include <string>
#include <string_view>
#include <vector>

namespace wallwright::hand_laid {

using arrange::Layout;
using arrange::Task;
using arrange::WallPoint;
using arrange::WallRect;
using geometry::Size;

/// Free pieces "p0", "p1", ... for a bare wall of 4000 by 2600 mm: gap 60, centre line at 1500, the
/// usual weights.
Task task_of(const std::vector<Size>& sizes);
/// The same with a sofa 2000 mm wide and 800 mm high in the middle of the wall beneath.
Task over_sofa(const std::vector<Size>& sizes);

/// All pieces in order, their lower left corners there.
Layout at(const Task& task, const std::vector<WallPoint>& corners);
/// In one row at the gap, their middles at 1500 mm, the row in the middle of the wall.
Layout row(const Task& task);
/// As many rows as it takes at the gap, top row first, for pieces of one size.
Layout grid(const Task& task, std::size_t columns);
/// Two rows about a level gap at 1500 mm: so many above it, the rest below.
Layout spine(const Task& task, std::size_t above);
/// Every piece moved.
Layout moved(Layout layout, double right, double up);

/// Of the measure of this name.
double value(std::string_view measure, const Task& task, const Layout& layout);
/// In mm.
std::string says(std::string_view measure, const Task& task, const Layout& layout);
double total(const Task& task, const Layout& layout);

}  // namespace wallwright::hand_laid
