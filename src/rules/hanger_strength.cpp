#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using units::Kilograms;
using wall::HangerType;
using wall::Severity;

constexpr Kilograms kSawtoothMost{5 * units::kKgPerPound};
constexpr double kSawtoothWidest = 400;  ///< mm of frame.
constexpr Kilograms kKeyholesMost{7};
constexpr Kilograms kRingsOnNarrow{10};
constexpr double kNarrow = 15;  ///< mm of wood behind the rebate, for the rings' screws.
constexpr Kilograms kJointsHold{9};
constexpr Kilograms kForProfessional{20};  ///< From here on the rule `heavy` speaks.

struct Weakness {
    Measure measure;
    std::string text;
};

std::optional<Weakness> of_sawtooth(const Scene& scene, const OnWall& one) {
    const Kilograms mass = one.hanging->mass.high;
    const double width = one.place.width();
    if (mass > kSawtoothMost)
        return Weakness{
            {mass.value, kSawtoothMost.value, "kg"},
            fmt::format("{} weighs up to {} and hangs by a sawtooth; over {}, give it "
                        "two rings.",
                        title_of(one), mass_text(scene, mass), mass_text(scene, kSawtoothMost))};
    if (exceeds(width, kSawtoothWidest))
        return Weakness{{width, kSawtoothWidest},
                        fmt::format("{} is {} wide and hangs by one sawtooth, on which a frame "
                                    "over {} wide does not stay level; give it two rings.",
                                    title_of(one), length_text(scene, width),
                                    length_text(scene, kSawtoothWidest))};
    return std::nullopt;
}

std::optional<Weakness> of_keyholes(const Scene& scene, const OnWall& one) {
    const Kilograms mass = one.hanging->mass.high;
    if (mass <= kKeyholesMost)
        return std::nullopt;
    return Weakness{
        {mass.value, kKeyholesMost.value, "kg"},
        fmt::format("{} weighs up to {} and hangs by keyholes; over {}, give it two rings.",
                    title_of(one), mass_text(scene, mass), mass_text(scene, kKeyholesMost))};
}

std::optional<Weakness> of_rings(const Scene& scene, const OnWall& one) {
    const Kilograms mass = one.hanging->mass.high;
    const double wood = one.frame->moulding_width - one.frame->rebate_width;
    if (mass <= kRingsOnNarrow || !exceeds(kNarrow, wood))
        return std::nullopt;
    return Weakness{{wood, kNarrow},
                    fmt::format("{} weighs up to {}, and its moulding has only {} behind the "
                                "rebate for the screws of its rings; over {}, have a framer "
                                "strengthen the back and set rings with two holes.",
                                title_of(one), mass_text(scene, mass), length_text(scene, wood),
                                mass_text(scene, kRingsOnNarrow))};
}

std::optional<Weakness> weakness_of(const Scene& scene, const OnWall& one) {
    switch (one.piece->hanger.type) {
        case HangerType::strips:
            return std::nullopt;  // weight-within-rating says what they may hold in all.
        case HangerType::sawtooth:
            return of_sawtooth(scene, one);
        case HangerType::keyholes:
            return of_keyholes(scene, one);
        case HangerType::two_rings:
        case HangerType::cord_one_hook:
        case HangerType::cord_two_hooks:
            break;
    }
    return of_rings(scene, one);
}

bool strains_its_joints(const OnWall& one) {
    const Kilograms mass = one.hanging->mass.high;
    return one.piece->hanger.type != HangerType::strips && mass > kJointsHold &&
           mass <= kForProfessional;
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    std::vector<const OnWall*> strained;
    for (const OnWall& one : scene.pieces) {
        if (auto weakness = weakness_of(scene, one))
            findings.push_back(finding(Severity::mind, {one.piece->id}, one.place,
                                       weakness->measure, std::move(weakness->text)));
        else if (strains_its_joints(one))
            strained.push_back(&one);
    }
    if (strained.empty())
        return;
    findings.push_back(finding(
        Severity::note, ids_of(strained), bounds_of(strained), std::nullopt,
        fmt::format("{} {} over {}; have a framer look at the corner joints, and at what the "
                    "hanger is screwed into.",
                    titles_of(strained), strained.size() == 1 ? "weighs" : "weigh",
                    mass_text(scene, kJointsHold))));
}

}  // namespace

const Rule kHangerStrength{
    "hanger-strength",
    "no sawtooth, keyholes or rings on a frame that is too heavy, too wide or too slender for them",
    "a sawtooth up to 5 lb (2.3 kg): common practice, no source; a sound frame first: Canadian "
    "Conservation Institute, CCI Notes 10/8; rings with two holes, since screw eyes alone fail: "
    "Studio Six Art Conservation (2009); all other bounds are our choice",
    check,
};

}  // namespace wallwright::rules
