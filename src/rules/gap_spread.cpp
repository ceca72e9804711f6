#include "hanging/gap_forecast.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    const double tolerance = scene.project.style.gap_tolerance;
    const hanging::GapForecast* worst = nullptr;
    std::vector<const OnWall*> pieces;
    std::size_t count = 0;
    for (const hanging::GapForecast& gap : scene.gaps) {
        if (!exceeds(gap.spread, tolerance))
            continue;
        ++count;
        if (worst == nullptr || gap.spread > worst->spread)
            worst = &gap;
        for (const OnWall& one : scene.pieces)
            if ((one.piece->id == gap.first || one.piece->id == gap.second) &&
                std::ranges::find(pieces, &one) == pieces.end())
                pieces.push_back(&one);
    }
    if (worst == nullptr)
        return;
    const auto way = hanging::truer_way(scene.project, scene.marks, *worst);
    const auto title = [&scene](const wall::PieceId& id) { return title_of(on_wall(scene, id)); };
    findings.push_back(finding(
        wall::Severity::note, ids_of(pieces), bounds_of(pieces), Measure{worst->spread, tolerance},
        fmt::format(
            "Measured from {}, the gap between {} and {} may come out {} off{}, {} that the "
            "eye lets pass{}.",
            hanging::datum_words(scene.project), title(worst->first), title(worst->second),
            length_text(scene, worst->spread),
            count > 1 ? fmt::format(" (and {} more like it)", count - 1) : "",
            passed_text(scene, worst->spread, tolerance),
            way ? "; " + *way : std::string("; measure twice and check between marks"))));
}

}  // namespace

const Rule kGapSpread{
    "gap-spread",
    "tape, level and pencil leave no gap farther off than is seen",
    "Measuring Instruments Directive 2014/32/EU, Annex X; errors in quadrature: J. R. Taylor, An "
    "Introduction to Error Analysis, pp. 77-79",
    check,
};

}  // namespace wallwright::rules
