#include "mounts/window.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

using geometry::Size;

std::string size_text(const Scene& scene, Size size) {
    return fmt::format("{} x {}", units::format_number(size.width, scene.project.unit),
                       length_text(scene, size.height));
}

/// The frame as it hangs.
wall::Frame as_hung(const OnWall& one) {
    return mounts::as_hung(*one.frame, one.piece->turned);
}

bool fits(Size print, Size blank) {
    return !exceeds(print.width, blank.width) && !exceeds(print.height, blank.height);
}

void report_too_large(const Scene& scene, const OnWall& one, Size print, Size blank,
                      std::vector<Finding>& findings) {
    const bool wide = print.width - blank.width > print.height - blank.height;
    const Measure measure =
        wide ? Measure{print.width, blank.width} : Measure{print.height, blank.height};
    findings.push_back(
        finding(Severity::stop, {one.piece->id}, one.place, measure,
                fmt::format("The print of {} is {}, and its frame takes {}; {}.", title_of(one),
                            size_text(scene, print), size_text(scene, blank),
                            fits(print, blank.turned()) ? "turn the frame a quarter"
                                                        : "choose a larger frame")));
}

/// Without a mount only the lip of the frame holds the print's edges.
void check_bare(const Scene& scene, const OnWall& one, const wall::Frame& frame, Size print,
                std::vector<Finding>& findings) {
    const Size sight{frame.outside.width - 2 * frame.moulding_width,
                     frame.outside.height - 2 * frame.moulding_width};
    const double bare = std::max(sight.width - print.width, sight.height - print.height) / 2;
    if (!exceeds(bare, 0))
        return;
    findings.push_back(finding(
        Severity::mind, {one.piece->id}, one.place, Measure{bare, 0},
        fmt::format(
            "The print of {} leaves {} bare on two sides of its frame, which shows {}; give it a "
            "mount or a smaller frame.",
            title_of(one), length_text(scene, bare), size_text(scene, sight))));
}

void check_print(const Scene& scene, const OnWall& one, const wall::Print& print,
                 std::vector<Finding>& findings) {
    const wall::Frame frame = as_hung(one);
    const Size blank = mounts::blank_size(frame);
    if (!fits(print.size, blank))
        report_too_large(scene, one, print.size, blank, findings);
    else if (!one.piece->mount)
        check_bare(scene, one, frame, print.size, findings);
}

/// What a mount with several windows shows is mount-serves' to look at.
void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const OnWall& one : scene.pieces)
        if (const auto prints = prints_in(scene.project, *one.piece); prints.size() == 1)
            check_print(scene, one, *prints.front(), findings);
}

}  // namespace

const Rule kPrintFitsFrame{
    "print-fits-frame",
    "the print goes into its frame and is covered on every side",
    "clearance of 1 to 3 mm in the rebate: Fine Art Trade Guild framing standards, read in "
    "framers' copies; the rest is plain geometry",
    check,
};

}  // namespace wallwright::rules
