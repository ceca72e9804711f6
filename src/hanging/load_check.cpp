#include "hanging/load_check.h"

#include "hanging/strips.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::hanging {

namespace {

using wall::Finding;
using wall::Severity;

constexpr double kOverhangShare = 0.25;  ///< Of a strip's width, over the rebate.

Finding measured(Finding finding, double value, double wanted, const char* unit) {
    finding.measured = value;
    finding.wanted = wanted;
    finding.unit = unit;
    return finding;
}

/// Says masses and lengths of one job in the person's unit.
struct Speech {
    units::LengthUnit unit;
    [[nodiscard]] std::string operator()(Kilograms mass) const { return format_mass(mass, unit); }
    [[nodiscard]] std::string operator()(double mm) const { return units::format_length(mm, unit); }
};

void check_rating(const Job& job, const Offer& offer, std::vector<Finding>& findings) {
    const auto worst =
        std::max_element(offer.fixings.begin(), offer.fixings.end(),
                         [](const Fixing& a, const Fixing& b) { return a.load < b.load; });
    if (worst == offer.fixings.end() || within_rating(worst->rated, worst->load, offer.margin))
        return;
    const Speech say{job.project.unit};
    const Kilograms allowed = worst->rated / offer.margin;
    const std::size_t count = offer.fixings.size();
    const std::string which =
        count == 1 ? "its fixing" : fmt::format("each of its {} fixings", count);
    const char* stronger = offer.type->kind == wall::FixingKind::strip_pair
                               ? "strip, hang it from rings on hooks"
                               : "fixing";
    findings.push_back(
        measured(about(job, kWeightWithinRating, Severity::stop,
                       fmt::format("{} ({}) would carry {} and may carry {} (rated {}, margin "
                                   "{:g}); take a stronger {} or make the piece lighter",
                                   which, offer.type->title, say(worst->load), say(allowed),
                                   say(worst->rated), offer.margin, stronger)),
                 worst->load.value, allowed.value, "kg"));
}

void check_total(const Job& job, std::vector<Finding>& findings) {
    const Kilograms most{job.project.style.strip_total_most};
    if (job.mass.high <= most)
        return;
    const Speech say{job.project.unit};
    findings.push_back(measured(about(job, kWeightWithinRating, Severity::stop,
                                      fmt::format("it weighs up to {}, more than the {} that "
                                                  "strips may hold however many; hang it from "
                                                  "rings on hooks or screws",
                                                  say(job.mass.high), say(most))),
                                job.mass.high.value, most.value, "kg"));
}

void check_count(const Job& job, const Offer& offer, std::vector<Finding>& findings) {
    const int wanted = std::min(offer.wanted, kMostPairs);
    const int there = static_cast<int>(offer.fixings.size());
    if (there >= wanted)
        return;
    findings.push_back(measured(about(job, kStripsFitTheBack, Severity::stop,
                                      fmt::format("it asks for {} pairs ({}), and its back has "
                                                  "room for {}; take a stronger strip or hang it "
                                                  "from rings on hooks",
                                                  wanted, offer.type->title, there)),
                                there, wanted, ""));
}

void check_flat(const Job& job, const Offer& offer, std::vector<Finding>& findings) {
    const wall::Frame& frame = frame_of(job.project, job.piece);
    const double strip = offer.type->footprint.width;
    const double wood = frame.moulding_width - frame.rebate_width;
    const Speech say{job.project.unit};
    if (!offer.lies_flat)
        findings.push_back(
            measured(about(job, kStripsFitTheBack, Severity::stop,
                           fmt::format("a strip {} wide ({}) cannot lie flat on a moulding {} "
                                       "wide; take a narrower strip or hang it from a hanger on "
                                       "hooks",
                                       say(strip), offer.type->title, say(frame.moulding_width))),
                     strip, frame.moulding_width, "mm"));
    else if (strip - wood > kOverhangShare * strip)
        findings.push_back(measured(
            about(job, kStripsFitTheBack, Severity::note,
                  fmt::format("a strip {} wide ({}) hangs over the rebate, since the moulding's "
                              "back is {} wide; see that the backing is level with it, or take a "
                              "narrower strip",
                              say(strip), offer.type->title, say(wood))),
            strip, wood, "mm"));
}

void check_hidden(const Job& job, const Offer& offer, std::vector<Finding>& findings) {
    const double depth = job.place.top() - offer.fixings.front().at.y;
    const double plate = offer.type->footprint.height;
    if (!shows_above(job, offer))
        return;
    const Speech say{job.project.unit};
    findings.push_back(measured(about(job, kHangerFits, Severity::note,
                                      fmt::format("the hook's plate, {} high ({}), shows above the "
                                                  "frame, which rests on it {} below its top; take "
                                                  "a smaller hook or a screw",
                                                  say(plate), offer.type->title, say(depth))),
                                depth, plate, "mm"));
}

}  // namespace

std::vector<Finding> check_load(const Job& job, const Offer& offer) {
    std::vector<Finding> findings;
    check_rating(job, offer, findings);
    if (offer.type->kind != wall::FixingKind::strip_pair) {
        check_hidden(job, offer, findings);
        return findings;
    }
    check_total(job, findings);
    check_count(job, offer, findings);
    check_flat(job, offer, findings);
    return findings;
}

}  // namespace wallwright::hanging
