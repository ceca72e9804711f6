// Growth: what hangs stays, and waiting pieces extend the group toward a target, stage by stage.
#pragma once

#include "arrange/arrange.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace wallwright::arrange {

struct GrowOptions {
    std::size_t per_stage = 1;  ///< Pieces that go up at a time; the last stage may have fewer.
    double seconds = 3;
    std::uint64_t seed = 1;
    std::uint64_t rounds = std::numeric_limits<std::uint64_t>::max();  ///< As in ArrangeOptions.
};

struct Stage {
    std::vector<wall::PieceId> adds;  ///< In the order to hang them.
    Layout layout;                    ///< The wall after it.
    Score score;
    /// Its total over the best total found for the same pieces where all but what stays today may
    /// go anywhere: how finished it looks, 1 at best. Nothing where the time was over, or the
    /// search stopped, before it could be compared.
    std::optional<double> finished;
    double to_target = 0;  ///< mm from the group to the target; 0 when it has reached it.
};

struct Growth {
    std::vector<Stage> stages;
    std::vector<wall::PieceId> left_out;  ///< No place for them, or not looked for any more.
    /// Stopped before every piece was looked at: those left out may have a place.
    bool cut_short = false;
    /// What the search went by: of each stage the total and up to 50 for how far it leads, half as
    /// the mean of all stages, half of the last. More rounds never bring less for as many pieces.
    double points = 0;
};

/// Where the target is: the furniture's or fixture's place, the point, the corner of the wall or
/// the region. Nothing for a thing that is not there.
std::optional<WallRect> place_of(const wall::Room& room, const wall::Target& target);

/// Every stage is allowed, each piece that it adds touches the group at the wanted gap, and the
/// stages together look as finished and lead as straight to the target as a beam search finds. The
/// task has only the waiting pieces free; some piece must stay. `go_on` gets how much is done, at
/// every piece that is looked at (some milliseconds at most among two hundred); false gives the
/// best so far, which is one piece at least where any has a place. The time alone does not end the
/// first, narrowest round: it gives every piece that has a place one (from milliseconds to some
/// seconds for a hundred frames of as many sizes).
Growth grow(const Task& task, const WallRect& target, const GrowOptions& options,
            const std::function<bool(double)>& go_on);

/// What growth starts from: pieces of an earlier growth wait again, but those that are pinned stay
/// where they are and belong to no stage any more.
wall::Project growth_start(const wall::Project& project);

/// The project, which has no stages yet, with the growth's pieces planned, each with the number of
/// its stage, from 1.
Result<wall::Project> with_growth(const wall::Project& project, const Task& task,
                                  const Growth& growth);

/// The project as it is once stage `stage` hangs: later stages' pieces wait. 0 is today.
wall::Project at_stage(const wall::Project& project, int stage);
/// The highest stage number of its pieces, 0 when none has one.
int last_stage(const wall::Project& project);

}  // namespace wallwright::arrange
