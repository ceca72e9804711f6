// What lies in the rebate one behind the other, and what there is to say about a mount.
#include "app/bench/mount_parts.h"
#include "app/panels/findings_sign.h"
#include "app/scoped.h"
#include "edits/prints.h"
#include "mounts/design/remarks.h"
#include "mounts/design/rule_step.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::app {

namespace {

using wall::Frame;
using wall::Layer;
using wall::Severity;

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

ImU32 colour_of(const Theme& theme, Severity severity) {
    switch (severity) {
        case Severity::stop:
            return theme.stop;
        case Severity::mind:
            return theme.mind;
        case Severity::note:
            return theme.quiet_text;
    }
    return theme.text;
}

constexpr float kSign = 16;  ///< px at a scale of 1, as is this.
constexpr float kTextAt = 26;

void remark_item(Ui& ui, const mounts::Remark& remark, const std::string& name) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float centre = ui.px(kSign) / 2 + ui.px(2);
    draw_sign(*ImGui::GetWindowDrawList(), {at.x + centre, at.y + centre}, ui.px(kSign) / 2,
              remark.severity, ui.theme());
    ImGui::SetCursorScreenPos({at.x + ui.px(kTextAt), at.y});
    {
        const ScopedGroup group;
        {
            const ScopedFont bold(ui.fonts.bold);
            const ScopedColour ink(ImGuiCol_Text, colour_of(ui.theme(), remark.severity));
            ImGui::TextUnformatted(capital(std::string(wall::name_of(remark.severity))).c_str());
        }
        const ScopedWrap wrap;
        ImGui::TextUnformatted(remark.text.c_str());
    }
    ui.probe.note(name);
    ImGui::Dummy({0, ui.px(2)});
}

void nothing_to_say(Ui& ui) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float centre = ui.px(kSign) / 2 + ui.px(2);
    draw_good_sign(*ImGui::GetWindowDrawList(), {at.x + centre, at.y + centre}, ui.px(kSign) / 2,
                   ui.theme());
    ImGui::SetCursorScreenPos({at.x + ui.px(kTextAt), at.y});
    const ScopedGroup group;
    const ScopedWrap wrap;
    ImGui::TextUnformatted("Nothing to say against this mount.");
    ui.probe.note("remarks/none");
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
                           units::format_length(depth.rebate, unit))},
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
        return nothing_to_say(ui);
    for (std::size_t i = 0; i < remarks.size(); ++i)
        remark_item(ui, remarks[i], fmt::format("remarks/{}", i));
}

}  // namespace wallwright::app
