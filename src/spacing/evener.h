// Turns pieces that are parted into an even group: which gaps are made equal, which edges line up.
#pragma once

#include "spacing/alignment.h"
#include "spacing/improve.h"
#include "spacing/reasons.h"
#include "spacing/squeeze.h"

#include <map>
#include <string>
#include <vector>

namespace wallwright::spacing {

/// A gap that is held to a size.
struct GapRule {
    std::uint32_t low = 0;  ///< Left of, or below, `high`.
    std::uint32_t high = 0;
    Axis axis = Axis::horizontal;
    double gap = 0;  ///< mm
};

/// Takes gaps between neighbours one by one, nearest to the wanted size first, and holds each to it
/// where the others allow; then alignments, nearest first. Gaps come before alignments, and keeping
/// pieces apart before both. Where gaps contradict each other, those on the shorter way between the
/// same two ends share the room evenly.
class Evener {
  public:
    /// `base` holds what is always true; `partings` part all its pairs. The first `pieces` bodies
    /// are pieces.
    Evener(Layout base, std::vector<Parting> partings, std::size_t pieces,
           const EvenOptions& options, const Reasons& reasons);

    /// Adds gap rules and alignments until no neighbours are left to consider.
    void run();
    /// Looks for other sides to part on with the rules and alignments kept; true when none moves
    /// less.
    bool improve_sides(std::uint64_t work);

    [[nodiscard]] const Layout& layout() const { return layout_; }
    [[nodiscard]] std::vector<Facing> neighbours() const;
    /// Pieces that come too near corner to corner.
    [[nodiscard]] std::vector<Facing> near_corners() const;
    /// Why the gap is not as wanted; empty when nothing is known to be in the way.
    [[nodiscard]] std::vector<std::string> why_uneven(const Facing& facing) const;
    [[nodiscard]] std::vector<std::string> why_near(const Facing& corners) const;
    [[nodiscard]] std::vector<std::string> why_unaligned(const Alignment& alignment) const;

  private:
    [[nodiscard]] std::vector<WallRect> places() const;

    using GapKey = std::pair<Pair, Axis>;
    using AlignmentKey = std::tuple<Pair, Axis, Line>;

    [[nodiscard]] std::vector<std::string> why_not_parted(Layout& layout, Pair asked) const;
    [[nodiscard]] bool is_known(const Facing& facing) const;
    [[nodiscard]] std::vector<Facing> unknown_of(std::vector<Facing> facings) const;
    void consider(const Facing& facing);
    [[nodiscard]] std::optional<Obstruction> hold(const GapRule& rule);
    bool spread(const GapRule& wanted, const std::vector<RingPart>& ring);
    void note_spread(Axis axis, const Adjustment& adjustment, const std::vector<RingPart>& ring);
    bool start_again(const std::vector<GapRule>& rules);
    [[nodiscard]] GapRule rule_of(Pair pair, Axis axis, double gap) const;

    void line_up_neighbours();
    bool try_alignment(const Alignment& alignment);

    Layout base_;
    std::vector<Parting> base_partings_;
    std::size_t pieces_;
    EvenOptions options_;
    const Reasons& reasons_;

    Layout layout_;
    std::vector<Parting> partings_;
    std::vector<GapRule> rules_;
    std::vector<Alignment> alignments_;
    std::map<GapKey, std::vector<std::string>>
        known_;  // every gap considered; with reasons when it is not as wanted
};

}  // namespace wallwright::spacing
