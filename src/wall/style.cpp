#include "wall/style.h"

namespace wallwright::wall {

namespace {

using S = HangingStyle;

constexpr StyleField kFields[] = {
    {"gap_mm", &S::gap, 1, 1000, "the wanted gap between facing neighbours",
     "2 to 3 in (50 to 75 mm) inside a group at home; common practice, no source"},
    {"gap_least_mm", &S::gap_least, 0, 1000, "a gap under this reads as touching",
     "1.5 in (38 mm) is the least named for grids; common practice, no source"},
    {"gap_most_mm", &S::gap_most, 1, 2000, "a gap over this reads as two groups",
     "3 in (75 mm) is the most named for a group at home; common practice, no source"},
    {"gap_tolerance_mm", &S::gap_tolerance, 0.1, 50,
     "gaps that differ by no more than this count as even",
     "about what a pencil and a class II tape leave (Measuring Instruments Directive 2014/32/EU, "
     "Annex X); our choice"},
    {"centre_height_mm", &S::centre_height, 300, 5000, "the centre line of a group above the floor",
     "1450 to 1550 mm in homes, 57 to 60 in (1448 to 1524 mm) in galleries; common practice, no "
     "source"},
    {"centre_tolerance_mm", &S::centre_tolerance, 1, 1000,
     "how far a group's centre may lie from the centre line",
     "half the usual range of 1450 to 1550 mm; common practice, no source"},
    {"clearance_least_mm", &S::clearance_least, 0, 2000,
     "the least clear height between furniture and the lowest frame",
     "6 in (152 mm); common practice, no source"},
    {"clearance_most_mm", &S::clearance_most, 0, 3000,
     "the most before group and furniture fall apart",
     "10 in (254 mm); common practice, no source"},
    {"width_share_least", &S::width_share_least, 0, 2,
     "the least width of a group against the furniture below it",
     "0.60 to 0.75 of the furniture; common practice, no source"},
    {"width_share_most", &S::width_share_most, 0.1, 3,
     "the most width of a group against the furniture below it",
     "0.60 to 0.75 of the furniture; common practice, no source"},
    {"align_within_mm", &S::align_within, 0, 200,
     "edges and centres nearer than this are meant to line up",
     "what an eye forgives across a gap; our choice"},
    {"strip_margin", &S::strip_margin, 1, 10,
     "rated load of the strips over the high weight of the piece",
     "1.5 to 2 times the weight; common practice, no source"},
    {"strip_total_most_kg", &S::strip_total_most, 0.1, 50,
     "the heaviest piece that strips may hold, however many",
     "16 lb (7.3 kg) for four large pairs on packets; common practice, no source"},
    {"fixing_margin", &S::fixing_margin, 1, 10,
     "rated working load of a hook or screw over the load on it",
     "working load under half the load at which it failed in test: a wall-fixing supplier's "
     "guidance"},
    {"cord_margin", &S::cord_margin, 1, 20,
     "breaking strength of a cord over the weight of the piece",
     "4 times the weight for braided wire: C. A. Paschke, Wire & Hangers, Picture Framing "
     "Magazine, February 2013"},
    {"bed_mass_most_kg", &S::bed_mass_most, 0, 20, "the heaviest piece over a bed or a cot",
     "only soft, light things belong over a bed: FEMA, How2015 (2008); the figure is our choice"},
    {"heat_above_mm", &S::heat_above, 0, 3000,
     "how far above a radiator its warm air still matters",
     "not over heaters: S. Saitzyk, Art Hardware (1987); the figure is our choice"},
    {"breaking_margin", &S::breaking_margin, 1, 20,
     "the load at which a hook or screw failed over the load on it",
     "4, as for cord: C. A. Paschke, Wire & Hangers, Picture Framing Magazine, February 2013; a "
     "wall-fixing supplier's guidance asks for more than 2",
     true},
    {"weak_wall_share", &S::weak_wall_share, 0.1, 1,
     "how much of its rating a fixing keeps in lath or plasterboard that its packet does not name",
     "test, and count on half: trade articles on wall fixings; common practice, no source", true},
    {"dry_days", &S::dry_days, 0, 365, "days that paint dries before strips go on it",
     "7 days: packets; common practice, no source", true},
    {"level_mm_per_m", &S::level_error, 0, 20, "by how much a line drawn with the level may rise",
     "0.5 mm in a metre for a good spirit level, 1 for a cheap one: makers' data sheets", true},
    {"ruler_step_mm", &S::ruler_step, 0, 10,
     "the step that the tape shows, to which marks are rounded; 0 is 1 mm, or 1/16 in where "
     "lengths are in inches",
     "tapes are divided so; common practice, no source", true},
};

}  // namespace

std::span<const StyleField> style_fields() {
    return kFields;
}

}  // namespace wallwright::wall
