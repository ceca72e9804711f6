// Why the wall, as it is shown, stands where it does: the measures of its arrangement.
#pragma once

#include "arrange/score.h"
#include "desk/session.h"

#include <cstdint>
#include <string>
#include <vector>

namespace wallwright::desk {

struct ScoreLine {
    const arrange::Measure* measure = nullptr;
    double value = 0;     ///< 0 to 1.
    double weight = 0;    ///< 0 to 10.
    bool applies = true;  ///< False when there is nothing to judge.
    std::string says;     ///< In the project's unit.
};

/// Kept until something changes.
struct ScoreCard {
    double total = 0;              ///< 0 to 100.
    std::vector<ScoreLine> lines;  ///< Of all measures in their order; none of an empty wall.
    std::uint64_t version = 0;     ///< Of the session, 0 before the first.
};

/// Scores project(), preview or not, when it is another than the last time.
void refresh(ScoreCard& card, const Session& session);

}  // namespace wallwright::desk
