#include "hanging/load_check.h"

#include "hanging/pull.h"
#include "hanging/strips.h"
#include "hanging/wall_check.h"

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

/// "rated 5.00 kg, margin 2", and what this wall makes of it.
std::string rating_words(const Job& job, const Offer& offer, const Fixing& fixing) {
    const Speech say{job.project.unit};
    const char* reached = offer.type->breaking ? "failed at" : "rated";
    if (fixing.rated == offer.type->rated)
        return fmt::format("{} {}, margin {:g}", reached, say(fixing.rated), offer.margin);
    return fmt::format("{} {}, of which {} count in {}, margin {:g}", reached,
                       say(offer.type->rated), say(fixing.rated),
                       name_of(core_behind(job.project.room)), offer.margin);
}

/// How far the load is past what it may be; less than 0 within it.
double excess(const Fixing& fixing, double margin) {
    return fixing.load.value - (fixing.rated / margin).value;
}

void check_rating(const Job& job, const Offer& offer, std::vector<Finding>& findings) {
    const auto worst = std::max_element(
        offer.fixings.begin(), offer.fixings.end(), [&offer](const Fixing& a, const Fixing& b) {
            return excess(a, offer.margin) < excess(b, offer.margin);
        });
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
    findings.push_back(measured(
        about(
            job, kWeightWithinRating, Severity::stop,
            fmt::format("{} ({}) would carry {} and may carry {} ({}); take a stronger {} or make "
                        "the piece lighter",
                        which, offer.type->title, say(worst->load), say(allowed),
                        rating_words(job, offer, *worst), stronger)),
        worst->load.value, allowed.value, "kg"));
}

void check_nails(const Job& job, const Offer& offer, std::vector<Finding>& findings) {
    const auto worst = std::find_if_not(offer.fixings.begin(), offer.fixings.end(), nails_hold);
    if (worst == offer.fixings.end())
        return;
    const units::LengthUnit unit = job.project.unit;
    findings.push_back(measured(
        about(job, kWeightWithinRating, Severity::stop,
              fmt::format("{} ({}) would be pulled off the wall with {}, and its nails hold {} in "
                          "the wood; take a screw, or hang the piece from farther up its back",
                          offer.fixings.size() == 1 ? "its hook" : "each of its hooks",
                          offer.type->title, format_force(worst->off_wall, unit),
                          format_force(*worst->nails_hold, unit))),
        worst->off_wall.value, worst->nails_hold->value, "N"));
}

/// Who is pulled, and what to do about it.
std::pair<std::string, const char*> pull_words(const Offer& offer) {
    if (offer.type->kind == wall::FixingKind::strip_pair)
        return {"each of its top pairs",
                "hang it from rings on screws, or make it lighter or less deep"};
    return {offer.fixings.size() == 1 ? "its hook" : "each of its hooks",
            "take a screw made for this wall or a stud, or hang the piece from farther up its "
            "back"};
}

/// Against the load down the wall, for which alone packets give a rating.
void check_pull(const Job& job, const Offer& offer, std::vector<Finding>& findings) {
    const auto worst =
        std::max_element(offer.fixings.begin(), offer.fixings.end(),
                         [](const Fixing& a, const Fixing& b) { return pull_on(a) < pull_on(b); });
    if (worst == offer.fixings.end() || pull_on(*worst) == Pull::slight)
        return;
    const bool is_stop = pull_on(*worst) == Pull::too_much;
    const units::LengthUnit unit = job.project.unit;
    const auto [which, remedy] = pull_words(offer);
    const double most = (is_stop ? 1 : kPullShare) * worst->down.value;
    findings.push_back(measured(
        about(job, kWeightWithinRating, is_stop ? Severity::stop : Severity::mind,
              fmt::format("{} ({}) would be pulled off the wall with {}, {} the {} that it carries "
                          "down it, and packets rate the load down the wall alone; {}",
                          which, offer.type->title, format_force(worst->off_wall, unit),
                          is_stop ? "more than" : "more than a quarter of",
                          format_force(worst->down, unit), remedy)),
        worst->off_wall.value, most, "N"));
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

void check_back(const Job& job, std::vector<Finding>& findings) {
    if (frame_of(job.project, job.piece).rough_back)
        findings.push_back(about(job, kStripsFitTheBack, Severity::stop,
                                 "its back is rough, dusty or soft, and strips do not hold on it; "
                                 "give it a hanger and hang it on hooks or screws"));
    if (job.piece.irreplaceable)
        findings.push_back(about(job, kIrreplaceableOnStrips, Severity::stop,
                                 "it cannot be replaced, and strips may let go; give it rings and "
                                 "hang it on hooks or screws"));
}

void check_strips(const Job& job, const Offer& offer, std::vector<Finding>& findings) {
    check_total(job, findings);
    check_count(job, offer, findings);
    check_flat(job, offer, findings);
    check_back(job, findings);
}

}  // namespace

std::vector<Finding> check_load(const Job& job, const Offer& offer) {
    std::vector<Finding> findings;
    check_wall(job, offer, findings);
    if (offer.unfit != Unfit::no && offer.type->kind != wall::FixingKind::strip_pair)
        return findings;  // What it would carry elsewhere says nothing.
    check_rating(job, offer, findings);
    check_nails(job, offer, findings);
    check_pull(job, offer, findings);
    if (offer.type->kind == wall::FixingKind::strip_pair)
        check_strips(job, offer, findings);
    else
        check_hidden(job, offer, findings);
    std::ranges::stable_sort(findings, {}, &Finding::severity);
    return findings;
}

}  // namespace wallwright::hanging
