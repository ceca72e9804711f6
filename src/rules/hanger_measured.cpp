#include "hanging/bearing.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    std::vector<const OnWall*> guessed;
    for (const OnWall& one : scene.pieces)
        if (one.piece->state == wall::PieceState::planned &&
            !hanging::is_measured(one.piece->hanger))
            guessed.push_back(&one);
    if (guessed.empty())
        return;
    findings.push_back(finding(
        wall::Severity::note, ids_of(guessed), bounds_of(guessed), std::nullopt,
        fmt::format("{}: where the hanger sits on the back was not measured, so the marks take "
                    "the usual place; measure from the top edge, and between rings along the "
                    "cord, before you nail.",
                    titles_of(guessed))));
}

}  // namespace

const Rule kHangerMeasured{
    "hanger-measured",
    "every hanger that a mark depends on was measured on the frame itself",
    "a hook sits as far below the top of the frame as its hanger does: plain geometry",
    check,
};

}  // namespace wallwright::rules
