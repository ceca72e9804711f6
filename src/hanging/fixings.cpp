#include "hanging/fixings.h"

#include "hanging/choice.h"
#include "hanging/hanger_fit.h"
#include "hanging/load_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

namespace wallwright::hanging {

namespace {

using wall::Severity;

/// Says what is wrong with the hanger; false when the piece cannot hang from it.
bool check_hanger(const Job& job, Hanging& hanging) {
    for (const Misfit& misfit : misfits(job.hanger, job.place.size(), job.project.unit)) {
        wall::Finding finding = about(job, kHangerFits, misfit.severity, to_text(misfit));
        finding.measured = misfit.measured;
        finding.wanted = misfit.wanted;
        finding.unit = misfit.unit;
        hanging.findings.push_back(std::move(finding));
    }
    return !has_stop(hanging.findings);
}

void stop(const Job& job, const char* rule, const std::string& text, Hanging& hanging) {
    hanging.findings.push_back(about(job, rule, Severity::stop, text));
}

/// The offer of the type that the person named; nothing, with a finding, when it cannot be used.
std::optional<Offer> own_choice(const Job& job, const wall::Catalogue& catalogue,
                                Hanging& hanging) {
    const wall::FixingType* type = find(catalogue, *job.piece.fixing);
    if (type == nullptr) {
        stop(job, kWeightWithinRating,
             fmt::format("its fixing \"{}\" is not in the catalogue, so that its rated load is not "
                         "known; add it or choose another",
                         job.piece.fixing->text),
             hanging);
        return std::nullopt;
    }
    if (!goes_with(job.hanger.type, type->kind)) {
        stop(job, kHangerFits,
             fmt::format("its fixing ({}) does not go with the hanger \"{}\" on its back; change "
                         "one of them",
                         type->title, name_of(job.hanger.type)),
             hanging);
        return std::nullopt;
    }
    return offer_of(job, *type);
}

std::optional<Offer> chosen(const Job& job, const wall::Catalogue& catalogue, const Drawer& drawer,
                            Hanging& hanging) {
    if (job.piece.fixing)
        return own_choice(job, catalogue, hanging);
    auto offer = choose(job, catalogue, drawer);
    if (!offer)
        stop(job, kWeightWithinRating,
             fmt::format(
                 "the catalogue has no fixing for the hanger \"{}\"; add one with its rated load",
                 name_of(job.hanger.type)),
             hanging);
    return offer;
}

void tie_cord(const Job& job, Hanging& hanging) {
    const Kilograms mass = job.mass.high;
    const auto bearing = bearing_of(job.hanger, job.place.size(), weight_of(mass));
    if (!bearing || !bearing->cord)
        return;
    hanging.cord = bearing->cord;
    hanging.cord_breaking_needed =
        job.project.style.cord_margin * std::max(mass, mass_with_weight(bearing->cord->tension));
}

void take_from_stock(const Job& job, Drawer& drawer, Hanging& hanging) {
    if (job.piece.state != wall::PieceState::planned || hanging.fixings.empty())
        return;
    const int wanted = static_cast<int>(hanging.fixings.size());
    hanging.from_stock = drawer.take(hanging.fixings.front().type, wanted);
    if (job.project.stock.empty() || hanging.from_stock >= wanted)
        return;
    const int missing = wanted - hanging.from_stock;
    const std::string which =
        wanted == 1 ? "its fixing" : fmt::format("{} of its {} fixings", missing, wanted);
    wall::Finding note =
        about(job, kFixingsInStock, Severity::note,
              fmt::format("{} ({}) {} not in stock; buy what is missing before hanging it", which,
                          hanging.fixing_title, missing == 1 ? "is" : "are"));
    note.measured = hanging.from_stock;
    note.wanted = wanted;
    hanging.findings.push_back(std::move(note));
}

void put_up(const Offer& offer, Hanging& hanging) {
    hanging.fixing_title = offer.type->title;
    hanging.fixings = offer.fixings;
    hanging.margin = offer.margin;
    hanging.top_pull = offer.top_pull;
    for (const Fixing& fixing : offer.fixings)
        hanging.use = std::max(hanging.use, fixing.load / fixing.rated);
}

Hanging hang(const Job& job, const wall::Catalogue& catalogue, Drawer& drawer) {
    Hanging hanging;
    hanging.piece = job.piece.id;
    hanging.mass = job.mass;
    if (!check_hanger(job, hanging))
        return hanging;
    tie_cord(job, hanging);
    const std::optional<Offer> offer = chosen(job, catalogue, drawer, hanging);
    if (!offer)
        return hanging;
    put_up(*offer, hanging);
    const std::vector<wall::Finding> wrong = check_load(job, *offer);
    hanging.findings.insert(hanging.findings.end(), wrong.begin(), wrong.end());
    take_from_stock(job, drawer, hanging);
    return hanging;
}

}  // namespace

geometry::Rect<geometry::Wall> covered_by(const Fixing& fixing) {
    const double below =
        fixing.kind == wall::FixingKind::nail_hook ? 0 : fixing.footprint.height / 2;
    return geometry::Rect<geometry::Wall>::at(
        {fixing.at.x - fixing.footprint.width / 2, fixing.at.y - below}, fixing.footprint);
}

geometry::Rect<geometry::Wall> pierced_by(const Fixing& fixing) {
    const double plate =
        fixing.kind == wall::FixingKind::nail_hook ? covered_by(fixing).top() : fixing.at.y;
    return {fixing.at, {fixing.at.x, plate}};
}

std::vector<Hanging> hang_all(const wall::Project& project, const wall::Catalogue& catalogue) {
    const std::vector<Job> jobs = jobs_of(project, catalogue);
    std::vector<std::size_t> order(jobs.size());
    std::iota(order.begin(), order.end(), 0U);
    // A frame that nobody has yet takes nothing from the drawer that another could use.
    std::ranges::stable_sort(order, {}, [&jobs](std::size_t i) {
        return std::pair(jobs[i].piece.wished, -jobs[i].mass.high.value);
    });
    Drawer drawer(project.stock);
    std::vector<Hanging> hangings(jobs.size());
    for (const std::size_t index : order)
        hangings[index] = hang(jobs[index], catalogue, drawer);
    return hangings;
}

}  // namespace wallwright::hanging
