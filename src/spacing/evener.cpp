#include "spacing/evener.h"

#include "spacing/rounding.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <tuple>

namespace wallwright::spacing {

namespace {

constexpr int kMostRounds = 8;
constexpr double kClosesWithin =
    1e-6;  // mm; a ring that fails to close by less closes but for rounding

bool closes(const std::vector<RingPart>& ring) {
    double excess = 0;
    for (const RingPart& part : ring) {
        excess += part.forward ? part.gap : -part.gap;
    }
    return std::abs(excess) < kClosesWithin;
}

Pair pair_of(const GapRule& rule) {
    return {std::min(rule.low, rule.high), std::max(rule.low, rule.high)};
}

bool add_rule(Layout& layout, const GapRule& rule) {
    const geometry::Size size = layout.body(rule.low).place.size();
    const double length = rule.axis == Axis::horizontal ? size.width : size.height;
    return layout.add(rule.axis, {rule.low, rule.high, length + rule.gap, true},
                      {Cause::Kind::even_gap, pair_of(rule), rule.gap, Line::centre});
}

}  // namespace

Evener::Evener(Layout base, std::vector<Parting> partings, std::size_t pieces,
               const EvenOptions& options, const Reasons& reasons)
    : base_(std::move(base)),
      base_partings_(std::move(partings)),
      pieces_(pieces),
      options_(options),
      reasons_(reasons),
      layout_(base_) {
    start_again({});
}

void Evener::run() {
    std::vector<Facing> unknown = unknown_of(neighbours());
    for (int round = 0;; ++round) {
        for (const Facing& facing : unknown) {
            consider(facing);
        }
        const Layout::Mark gaps_only = layout_.mark();
        const std::size_t partings_before = partings_.size();
        line_up_neighbours();
        unknown = unknown_of(neighbours());
        if (unknown.empty() || round == kMostRounds) {
            return;
        }
        // Lining up has brought others face to face. Their gaps come first, so the lining up is
        // done anew.
        layout_.undo(gaps_only);
        partings_.resize(partings_before);
    }
}

bool Evener::improve_sides(std::uint64_t work) {
    Layout ruled = base_;
    for (const GapRule& rule : rules_) {
        add_rule(ruled, rule);
    }
    for (const Alignment& alignment : alignments_) {
        line_up(ruled, alignment);
    }
    const Solution best = improve(ruled, {partings_, layout_.cost(), false}, work);
    if (best.cost < layout_.cost()) {
        for (const Parting& parting : best.partings) {
            ruled.part(parting.pair, parting.side);
        }
        layout_ = std::move(ruled);
        partings_ = best.partings;
    }
    return best.least_proved;
}

std::vector<Facing> Evener::neighbours() const {
    return facing_pairs(places(), options_.reach);
}

std::vector<Facing> Evener::near_corners() const {
    std::vector<Facing> pairs = corner_pairs(places(), options_.gap);
    std::erase_if(pairs, [this](const Facing& pair) {
        return layout_.body(pair.first).held && layout_.body(pair.second).held;
    });
    return pairs;
}

std::vector<WallRect> Evener::places() const {
    std::vector<WallRect> places;
    for (std::size_t i = 0; i < pieces_; ++i) {
        places.push_back(layout_.place(i));
    }
    return places;
}

std::vector<std::string> Evener::why_uneven(const Facing& facing) const {
    const Pair pair = pair_of(facing);
    const auto found = known_.find({pair, facing.axis});
    if (found != known_.end() && !found->second.empty()) {
        return found->second;
    }
    Layout probe = layout_;
    if (add_rule(probe, rule_of(pair, facing.axis, options_.gap))) {
        return why_not_parted(probe, pair);
    }
    return reasons_.of_ring(facing.axis, probe.ring(facing.axis), std::array{pair});
}

std::vector<std::string> Evener::why_near(const Facing& corners) const {
    const Pair pair = pair_of(corners);
    Layout probe = layout_;
    probe.allow(pair, options_.gap);
    std::vector<Parting> partings;
    const std::optional<Obstruction> obstruction = part_nearby(probe, partings, options_.reach);
    if (!obstruction || obstruction->ring.empty()) {
        return {"others would have to move far"};
    }
    return reasons_.of_ring(obstruction->axis, obstruction->ring, std::array{pair});
}

std::vector<std::string> Evener::why_unaligned(const Alignment& alignment) const {
    Layout probe = layout_;
    if (line_up(probe, alignment)) {
        return why_not_parted(probe, alignment.pair);
    }
    return reasons_.of_ring(alignment.axis, probe.ring(alignment.axis), std::array{alignment.pair});
}

/// What keeps the layout from being parted once a wish of the pair is in it.
std::vector<std::string> Evener::why_not_parted(Layout& layout, Pair asked) const {
    std::vector<Parting> partings;
    const std::optional<Obstruction> obstruction = part_nearby(layout, partings, options_.reach);
    if (!obstruction) {
        return {"others would have to move far"};
    }
    if (obstruction->ring.empty()) {
        return {reasons_.of_clash(obstruction->pair)};
    }
    return reasons_.of_ring(obstruction->axis, obstruction->ring, std::array{asked});
}

bool Evener::is_known(const Facing& facing) const {
    return known_.contains({pair_of(facing), facing.axis});
}

/// Those not considered yet, nearest to the wanted gap first.
std::vector<Facing> Evener::unknown_of(std::vector<Facing> facings) const {
    std::erase_if(facings, [this](const Facing& facing) { return is_known(facing); });
    std::ranges::stable_sort(facings, {}, [this](const Facing& facing) {
        return without_rounding(std::abs(facing.size - options_.gap));
    });
    return facings;
}

void Evener::consider(const Facing& facing) {
    const Pair pair = pair_of(facing);
    const GapKey key{pair, facing.axis};
    if (is_known(facing)) {
        return;  // settled with another gap in the meantime
    }
    if (layout_.body(pair.first).held && layout_.body(pair.second).held) {
        known_[key] = reasons_.of_held(pair);
        return;
    }
    const GapRule wanted = rule_of(pair, facing.axis, options_.gap);
    std::optional<Obstruction> obstruction = hold(wanted);
    while (obstruction && let_groups_meet(base_, obstruction->ring) && start_again(rules_)) {
        obstruction = hold(wanted);
    }
    if (!obstruction || (!obstruction->ring.empty() && closes(obstruction->ring))) {
        known_[key] = {};
    } else if (obstruction->ring.empty()) {
        known_[key] = {reasons_.of_clash(obstruction->pair)};
    } else if (!spread(wanted, obstruction->ring)) {
        known_[key] = reasons_.of_ring(facing.axis, obstruction->ring, std::array{pair});
    }
}

/// Adds the rule and parts what it brings too near; where that cannot be nothing changes.
std::optional<Obstruction> Evener::hold(const GapRule& rule) {
    const Layout::Mark before = layout_.mark();
    const std::size_t partings_before = partings_.size();
    if (!add_rule(layout_, rule)) {
        return Obstruction{pair_of(rule), rule.axis, layout_.ring(rule.axis)};
    }
    std::optional<Obstruction> obstruction = part_nearby(layout_, partings_, options_.reach);
    if (obstruction) {
        layout_.undo(before);
        partings_.resize(partings_before);
    } else {
        rules_.push_back(rule);
    }
    return obstruction;
}

/// Lets the gaps that contradict the wanted one share the room with it. False when that cannot be;
/// then nothing changes.
bool Evener::spread(const GapRule& wanted, const std::vector<RingPart>& ring) {
    const std::optional<Adjustment> adjustment = adjustment_of(layout_, ring);
    if (!adjustment) {
        return false;
    }
    std::vector<GapRule> rules = rules_;
    rules.push_back(wanted);
    const Layout base_before = base_;
    for (const Pair pair : adjustment->pairs) {
        std::erase_if(rules, [&](const GapRule& rule) {
            return rule.axis == wanted.axis && pair_of(rule) == pair;
        });
        rules.push_back(rule_of(pair, wanted.axis, adjustment->gap));
        base_.allow(pair, std::min(adjustment->gap, base_.distance(pair)));
    }
    if (!start_again(rules)) {
        base_ = base_before;
        return false;
    }
    known_[{pair_of(wanted), wanted.axis}] = {};
    note_spread(wanted.axis, *adjustment, ring);
    return true;
}

void Evener::note_spread(Axis axis, const Adjustment& adjustment,
                         const std::vector<RingPart>& ring) {
    const std::vector<std::string> reasons = reasons_.of_ring(axis, ring, adjustment.pairs);
    for (const Pair pair : adjustment.pairs) {
        known_[{pair, axis}] = reasons;
    }
}

/// Builds the layout anew with these rules. False when they cannot all be kept; then nothing
/// changes.
bool Evener::start_again(const std::vector<GapRule>& rules) {
    Layout layout = base_;
    std::vector<Parting> partings;
    for (const GapRule& rule : rules) {
        if (!add_rule(layout, rule) && !closes(layout.ring(rule.axis))) {
            return false;
        }
    }
    for (const Parting& parting : base_partings_) {
        if (layout.part(parting.pair, parting.side)) {
            partings.push_back(parting);
        }
    }
    if (part_nearby(layout, partings, options_.reach)) {
        return false;
    }
    layout_ = std::move(layout);
    partings_ = std::move(partings);
    rules_ = rules;
    return true;
}

GapRule Evener::rule_of(Pair pair, Axis axis, double gap) const {
    const auto low_edge = [&](std::uint32_t body) {
        const WallRect place = layout_.place(body);
        return axis == Axis::horizontal ? place.min.x : place.min.y;
    };
    const bool in_order = low_edge(pair.first) <= low_edge(pair.second);
    return {in_order ? pair.first : pair.second, in_order ? pair.second : pair.first, axis, gap};
}

/// Lines up what is near, until lining up brings no further neighbours face to face.
void Evener::line_up_neighbours() {
    alignments_.clear();
    std::set<AlignmentKey> tried;
    std::set<std::pair<Pair, Axis>> in_line;
    for (bool any = true; any;) {
        any = false;
        for (const Alignment& alignment :
             near_alignments(layout_, neighbours(), options_.align_within)) {
            const std::pair lines{alignment.pair, alignment.axis};
            if (in_line.contains(lines) ||
                !tried.insert({alignment.pair, alignment.axis, alignment.line}).second) {
                continue;
            }
            any = true;
            if (try_alignment(alignment)) {
                in_line.insert(lines);
            }
        }
    }
}

bool Evener::try_alignment(const Alignment& alignment) {
    // Lining up moves each piece by a little; what costs more pushes others out of their places.
    const double cost_limit = layout_.cost() + static_cast<double>(pieces_) *
                                                   options_.align_within * options_.align_within;
    const Layout::Mark before = layout_.mark();
    const std::size_t partings_before = partings_.size();
    if (!line_up(layout_, alignment)) {
        return closes(layout_.ring(alignment.axis));
    }
    if (part_nearby(layout_, partings_, options_.reach) || layout_.cost() > cost_limit) {
        layout_.undo(before);
        partings_.resize(partings_before);
        return false;
    }
    alignments_.push_back(alignment);
    return true;
}

}  // namespace wallwright::spacing
