// What lies in the rebate one behind the other, and what there is to say about a mount.
#include "app/bench/mount_parts.h"
#include "app/panels/findings_sign.h"
#include "edits/prints.h"
#include "mounts/design/remarks.h"
#include "mounts/design/rule_step.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::app {

namespace {

using wall::Frame;
using wall::Layer;

/// A thickness of 0: there is none.
void layer_row(Ui& ui, State& state, const OneMount& it, const char* name, const char* label,
               Layer Frame::*layer, const char* why) {
    const auto mm = length_row(ui, name, label, (it.one.frame.*layer).thickness, it.one.unit, why);
    if (mm)
        change_frame(state, it.one, "Measure the frame of",
                     [layer, mm](Frame& frame) { (frame.*layer).thickness = *mm; });
}

/// Of the heaviest sheet, which is the thickest.
void paper_row(Ui& ui, State& state, const OneMount& it) {
    const wall::Print* thickest = nullptr;
    for (const wall::Print* print : wall::prints_in(state.session.project(), it.one.piece))
        if (thickest == nullptr || print->grams_per_square_metre > thickest->grams_per_square_metre)
            thickest = print;
    if (thickest == nullptr)
        return;
    const auto grams =
        count_row(ui, "mount/paper", "Print, g/m²",
                  static_cast<int>(std::lround(thickest->grams_per_square_metre)),
                  fmt::format("Weight of its paper, which makes it {} thick.",
                              units::format_length(it.design->depth.print, it.one.unit)),
                  {0, 9999});
    if (!grams)
        return;
    const wall::PrintId id = thickest->id;
    state.session.apply(
        fmt::format("Weigh the paper of {}", it.one.title),
        edits::change_print_everywhere(state.session.kept(), id, [grams](wall::Print& print) {
            print.grams_per_square_metre = *grams;
        }));
}

}  // namespace

void mount_depth(Ui& ui, State& state, const OneMount& it) {
    if (!it.design)
        return hint(ui, "Its depth follows when there is a print behind it.");
    const mounts::Depth& depth = it.design->depth;
    const units::LengthUnit unit = it.one.unit;
    const double limit = depth.rebate > 0 ? depth.rebate : depth.total();
    share_row(ui, "In the rebate",
              {depth.total() / limit, 1,
               fmt::format("{} of {}", units::format_number(depth.total(), unit),
                           units::format_length(depth.rebate, unit)),
               depth.total() <= limit + geometry::kLengthEps},
              "Glazing, card, print and backing one behind the other; what is left over is for the "
              "pins that hold them.");
    layer_row(ui, state, it, "mount/glazing", "Glazing", &Frame::glazing, "0 where there is none.");
    if (depth.spacer > 0)
        value_row(ui, "Spacers", mounts::board_text(depth.spacer),
                  "They keep the glazing off a print that floats.");
    value_row(ui, "Card", mounts::board_text(depth.layers), "All layers together.");
    paper_row(ui, state, it);
    layer_row(ui, state, it, "mount/backing", "Backing", &Frame::backing, "0 where there is none.");
}

void mount_remarks(Ui& ui, const State& state) {
    const auto it = mount_on_bench(state.session);
    if (!it || !it->design)
        return;
    heading(ui, "What this mount says");
    const auto remarks = mounts::remarks_on(*it->design, it->mount, it->one.unit);
    if (remarks.empty())
        return show_nothing_said(ui, "Nothing to say against this mount.", "remarks/none");
    for (std::size_t i = 0; i < remarks.size(); ++i) {
        show_said(ui, ImGui::GetCursorScreenPos(), remarks[i].severity, remarks[i].text);
        ui.probe.note(fmt::format("remarks/{}", i));
        ImGui::Dummy({0, ui.px(2)});
    }
}

}  // namespace wallwright::app
