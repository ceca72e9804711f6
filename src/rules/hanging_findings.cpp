#include "rules/all.h"

#include <algorithm>
#include <iterator>

namespace wallwright::rules {

namespace {

/// What choosing the fixings brought to light, under the name it was given there.
void hand_on(std::string_view name, const Scene& scene, std::vector<wall::Finding>& findings) {
    for (const OnWall& one : scene.pieces)
        std::ranges::copy_if(one.hanging->findings, std::back_inserter(findings),
                             [name](const wall::Finding& each) { return each.rule == name; });
}

}  // namespace

const Rule kWeightWithinRating{
    hanging::kWeightWithinRating,
    "no fixing carries more than its rated load with a margin, and strips no more than they may in "
    "all",
    "1.5 to 2 times the weight for strips and 7 kg in all: packets, common practice, no source; "
    "working load under half "
    "the load that failed in test for hooks and screws: a wall-fixing supplier's guidance",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kWeightWithinRating, scene, findings);
    },
};

const Rule kHangerFits{
    hanging::kHangerFits,
    "rings, cord and hooks suit the frame and each other, and no cord is too flat",
    "plain geometry; a trade chart of wire angles: at 10 degrees each ring takes nearly three "
    "times the weight",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kHangerFits, scene, findings);
    },
};

const Rule kStripsFitTheBack{
    hanging::kStripsFitTheBack,
    "all strips that a piece needs lie flat on the back of its moulding",
    "flat on a hard, smooth back, top corners first: packets, common practice, no source",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kStripsFitTheBack, scene, findings);
    },
};

const Rule kFixingsInStock{
    hanging::kFixingsInStock,
    "the drawer holds the fixings that the plan takes from it",
    "what the person has said is in stock",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        hand_on(hanging::kFixingsInStock, scene, findings);
    },
};

}  // namespace wallwright::rules
