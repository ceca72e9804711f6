// What a layout is judged by, one file a measure, and the table of all of them.
#pragma once

#include "arrange/view.h"
#include "units/length.h"

#include <span>
#include <string>
#include <string_view>

namespace wallwright::arrange {

struct Measure {
    std::string_view name;     ///< In snake case, as in files: "even_gaps".
    std::string_view title;    ///< "Even gaps".
    std::string_view formula;  ///< How the value comes about, in one line.
    std::string_view source;
    double usual_weight = 1;
    /// From 0, worst, to 1. The view holds at least one piece. Quick: the search asks a million
    /// times.
    double (*value)(const View&);
    /// What a tape would find, in one short sentence: "All 14 gaps are 60 mm."
    std::string (*says)(const View&, units::LengthUnit);
    /// False for a task in which it has nothing to judge; null where it always has.
    bool (*applies)(const Task&) = nullptr;
};

/// Every measure once; first what a tape can verify.
std::span<const Measure> all_measures();
/// Null where there is none of that name.
const Measure* find_measure(std::string_view name);

/// One a measure: whether it has something to judge in this task.
std::vector<bool> applying(const Task& task);

/// One a measure: the project's own where it has one, else the usual.
std::vector<double> weights_of(const wall::Project& project);

}  // namespace wallwright::arrange
