#include "arrange/measure.h"

#include "arrange/measures/all.h"

#include <algorithm>
#include <array>

namespace wallwright::arrange {

std::span<const Measure> all_measures() {
    // Made on the first call: the measures are constants of other files.
    static const std::array kMeasures{
        kEvenGaps, kHoles,       kAlignment,        kCentreHeight,
        kEyeLevel, kClearance,   kWidthToFurniture, kCentred,
        kTogether, kWishes,      kCompactness,      kRaggedEdge,
        kBalance,  kEquilibrium, kUnlikeNeighbours, kColours,
    };
    return kMeasures;
}

const Measure* find_measure(std::string_view name) {
    const std::span<const Measure> all = all_measures();
    const auto found = std::ranges::find(all, name, &Measure::name);
    return found == all.end() ? nullptr : &*found;
}

std::vector<bool> applying(const Task& task) {
    std::vector<bool> applies;
    for (const Measure& measure : all_measures())
        applies.push_back(measure.applies == nullptr || measure.applies(task));
    return applies;
}

std::vector<double> weights_of(const wall::Project& project) {
    std::vector<double> weights;
    for (const Measure& measure : all_measures()) {
        const auto own =
            std::ranges::find(project.weights, measure.name, &wall::MeasureWeight::measure);
        weights.push_back(own == project.weights.end() ? measure.usual_weight : own->weight);
    }
    return weights;
}

}  // namespace wallwright::arrange
