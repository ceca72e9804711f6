#include "hanging/studs.h"

#include "base/contract.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

/// How far from a stud's middle a screw may be, mm.
double reach_of(const wall::Studs& studs) {
    return std::max(0.0, studs.width / 2 - kStudEdge);
}

/// mm from the nearest stud's middle to the place, to the right or less than 0.
double beside(const wall::Studs& studs, double across) {
    return std::remainder(across - studs.first, studs.spacing);
}

/// The middle of all moves near `move` after which every place lies on a stud.
std::optional<double> settled(const wall::Studs& studs, const std::vector<double>& places,
                              double move) {
    double least = move - studs.spacing;
    double most = move + studs.spacing;
    for (const double place : places) {
        const double middle = move - beside(studs, place + move);
        least = std::max(least, middle - reach_of(studs));
        most = std::min(most, middle + reach_of(studs));
    }
    return least <= most ? std::optional((least + most) / 2) : std::nullopt;
}

}  // namespace

bool on_stud(const wall::Studs& studs, double across) {
    constexpr double kRounding = 1e-6;
    return std::abs(beside(studs, across)) <= reach_of(studs) + kRounding;
}

std::optional<double> move_onto_studs(const wall::Studs& studs, const std::vector<double>& places) {
    WW_EXPECT(!places.empty(), "something is to be moved onto the studs");
    std::optional<double> shortest;
    for (const double place : places)
        for (const int next : {-1, 0, 1}) {
            const auto move = settled(studs, places, next * studs.spacing - beside(studs, place));
            if (move && (!shortest || std::abs(*move) < std::abs(*shortest)))
                shortest = move;
        }
    return shortest;
}

}  // namespace wallwright::hanging
