#include "mounts/sharpness.h"
#include "rules/all.h"
#include "rules/judge.h"

namespace wallwright::rules {

namespace {

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    for (const OnWall& one : scene.pieces)
        for (const wall::Print* print : prints_in(scene.project, *one.piece)) {
            const auto seen = mounts::sharpness_of(*print, scene.project.unit);
            if (seen && seen->soft)
                findings.push_back(finding(wall::Severity::note, {one.piece->id}, one.place,
                                           Measure{seen->pixels_per_inch, seen->resolved, "px/in"},
                                           seen->text));
        }
}

}  // namespace

const Rule kPrintSharp{
    "print-sharp",
    "a photograph has the pixels that an eye resolves from where one looks at it",
    "20/20 sight tells one minute of arc apart; pictures are looked at from 1.5 to 2 diagonals, "
    "common practice, no source",
    check,
};

}  // namespace wallwright::rules
