#include "hanging/fixings.h"

#include "hanging/choice.h"
#include "hanging/hanger_fit.h"
#include "hanging/load_check.h"
#include "hanging/stud_near.h"
#include "hanging/supply.h"

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
    if (!goes_with(job.hanger.type, *type)) {
        stop(job, kHangerFits,
             fmt::format("its fixing ({}) does not go with the hanger \"{}\" on its back; change "
                         "one of them",
                         type->title, name_of(job.hanger.type)),
             hanging);
        return std::nullopt;
    }
    return offer_of(job, *type);
}

/// The person's choice alone, or all that may be chosen; empty, with a finding, where nothing can.
std::vector<Offer> offers_for(const Job& job, const wall::Catalogue& catalogue, Hanging& hanging) {
    if (job.piece.fixing) {
        auto own = own_choice(job, catalogue, hanging);
        return own ? std::vector<Offer>{std::move(*own)} : std::vector<Offer>{};
    }
    if (job.piece.state != wall::PieceState::planned) {
        if (auto offer = choose(job, catalogue, Drawer({})))
            return {std::move(*offer)};
    } else if (Choices choices = choices_of(job, catalogue); !choices.offers.empty()) {
        return std::move(choices.offers);
    }
    stop(job, kWeightWithinRating,
         fmt::format(
             "the catalogue has no fixing for the hanger \"{}\"; add one with its rated load",
             name_of(job.hanger.type)),
         hanging);
    return {};
}

void tie_cord(const Job& job, Hanging& hanging) {
    const Kilograms mass = job.mass.high;
    hanging.cord = job.bearing->cord;
    if (hanging.cord)
        hanging.cord_breaking_needed =
            job.project.style.cord_margin * std::max(mass, mass_with_weight(hanging.cord->tension));
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

/// A cord from the rail must hold the piece even where it hangs on it alone.
void hang_on_rail(const Job& job, Hanging& hanging) {
    const Kilograms needed = job.project.style.cord_margin * job.mass.high;
    hanging.cord_breaking_needed = std::max(needed, hanging.cord_breaking_needed.value_or(needed));
}

void put_up(const Job& job, const Offer& offer, Hanging& hanging) {
    const Sold sold = sold_as(job.project, *offer.type);
    hanging.fixing_title = offer.type->title;
    hanging.pack = sold.pack;
    hanging.price = sold.price;
    hanging.margin = offer.margin;
    const std::vector<wall::Finding> wrong = check_load(job, offer);
    hanging.findings.insert(hanging.findings.end(), wrong.begin(), wrong.end());
    if (offer.unfit == Unfit::rail)
        return;  // There is no place for it.
    hanging.fixings = offer.fixings;
    hanging.top_pull = offer.top_pull;
    if (offer.type->kind == wall::FixingKind::rail_hook)
        hang_on_rail(job, hanging);
    for (const Fixing& fixing : offer.fixings)
        hanging.use = std::max(hanging.use, fixing.load / fixing.rated);
}

/// Hangs all pieces of one wall.
class Hand {
  public:
    Hand(const wall::Project& project, const wall::Catalogue& catalogue)
        : project_(project),
          catalogue_(catalogue),
          jobs_(jobs_of(project, catalogue)),
          offers_(jobs_.size()),
          hangings_(jobs_.size()),
          drawer_(project.stock) {}

    std::vector<Hanging> all() {
        for (std::size_t i = 0; i < jobs_.size(); ++i)
            look_at(i);
        plan();
        give_out();
        return std::move(hangings_);
    }

  private:
    void look_at(std::size_t index) {
        const Job& job = jobs_[index];
        Hanging& hanging = hangings_[index];
        hanging.piece = job.piece.id;
        hanging.mass = job.mass;
        if (!check_hanger(job, hanging))
            return;
        tie_cord(job, hanging);
        offers_[index] = offers_for(job, catalogue_, hanging);
    }

    [[nodiscard]] bool takes_from_stock(std::size_t index, bool wished) const {
        const wall::Piece& piece = jobs_[index].piece;
        return piece.state == wall::PieceState::planned && piece.wished == wished &&
               !offers_[index].empty();
    }

    /// A frame that nobody has yet takes nothing that another could use.
    void plan() {
        std::vector<Supply> supplies = supplies_of(project_, catalogue_, drawer_);
        for (const bool wished : {false, true}) {
            std::vector<std::size_t> pieces;
            std::vector<std::vector<Way>> ways;
            for (std::size_t i = 0; i < jobs_.size(); ++i) {
                if (!takes_from_stock(i, wished))
                    continue;
                pieces.push_back(i);
                ways.push_back(ways_of(jobs_[i], offers_[i], catalogue_));
            }
            const FixingPlan plan = plan_fixings(supplies, ways);
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                keep_only(offers_[pieces[i]], plan.ways[i]);
                hangings_[pieces[i]].best_known = plan.proved;
            }
            for (std::size_t type = 0; type < supplies.size(); ++type)
                supplies[type].have = plan.left[type];
        }
    }

    static void keep_only(std::vector<Offer>& offers, std::size_t chosen) {
        Offer offer = std::move(offers[chosen]);
        offers.clear();
        offers.push_back(std::move(offer));
    }

    /// The heaviest are served first, so that what is short is short where it matters less.
    void give_out() {
        std::vector<std::size_t> order(jobs_.size());
        std::iota(order.begin(), order.end(), 0U);
        std::ranges::stable_sort(order, {}, [this](std::size_t i) {
            return std::pair(jobs_[i].piece.wished, -jobs_[i].mass.high.value);
        });
        for (const std::size_t index : order) {
            if (offers_[index].empty())
                continue;
            put_up(jobs_[index], offers_[index].front(), hangings_[index]);
            if (auto note = stud_near(jobs_[index], catalogue_, offers_[index].front()))
                hangings_[index].findings.push_back(std::move(*note));
            take_from_stock(jobs_[index], drawer_, hangings_[index]);
        }
    }

    const wall::Project& project_;
    const wall::Catalogue& catalogue_;
    std::vector<Job> jobs_;
    std::vector<std::vector<Offer>> offers_;
    std::vector<Hanging> hangings_;
    Drawer drawer_;
};

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
    return Hand(project, catalogue).all();
}

}  // namespace wallwright::hanging
