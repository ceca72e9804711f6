#include "app/panels/findings_sign.h"
#include "app/panels/panels.h"
#include "app/scoped.h"
#include "app/widgets.h"
#include "desk/fix.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::Finding;

/// Empty when only the person can mend it or it is not known yet. One is worked out a frame, since
/// each asks for the whole wall to be judged anew.
std::string fix_label(Ui& ui, const desk::Session& session, const Finding& finding,
                      bool& may_work) {
    FixLabels& labels = ui.memory.fixes;
    const auto known = std::ranges::find(labels.entries, finding, &FixLabels::Entry::finding);
    if (known != labels.entries.end())
        return known->label;
    if (!may_work) {
        ui.memory.wake(0);
        return "";
    }
    may_work = false;
    const std::optional<desk::Fix> fix = desk::fix_for(session, finding);
    labels.entries.push_back({finding, fix ? fix->label : ""});
    return labels.entries.back().label;
}

void forget_old_fixes(FixLabels& labels, std::uint64_t version) {
    if (labels.version == version)
        return;
    labels.version = version;
    labels.entries.clear();
}

/// What was remembered may be of another wall, so the fix is worked out anew before it is made.
void mend(desk::Session& session, const Finding& finding) {
    std::optional<desk::Fix> fix = desk::fix_for(session, finding);
    if (fix)
        session.apply(fix->label, std::move(fix->project));
}

void show_place(desk::Session& session, const Finding& finding) {
    session.selection.set(finding.pieces);
    session.pointed_out = finding.place;
}

/// Sign and words, which can be pressed as one.
void finding_item(Ui& ui, desk::Session& session, const Finding& finding, const std::string& name) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const float words_width = width - ui.px(kSaidAt);
    const float height = ImGui::GetTextLineHeightWithSpacing() +
                         ImGui::CalcTextSize(finding.text.c_str(), nullptr, false, words_width).y;
    if (ImGui::Selectable("##finding", false, 0, {width, height}))
        show_place(session, finding);
    ui.probe.note(name);
    tip(ui, "Shows where on the wall.");
    show_said(ui, at, finding.severity, finding.text);
}

void fix_button(Ui& ui, desk::Session& session, const Finding& finding, const std::string& name,
                bool& may_work) {
    if (session.has_preview() || !ImGui::IsItemVisible())
        return;
    const std::string label = fix_label(ui, session, finding, may_work);
    if (label.empty())
        return;
    ImGui::SetCursorPosX(ImGui::GetCursorPosX() + ui.px(kSaidAt));
    if (button(ui, fmt::format("{}/fix", name).c_str(), label.c_str(),
               "Mends it; Undo takes it back."))
        mend(session, finding);
}

}  // namespace

void findings_panel(Ui& ui, State& state) {
    desk::Session& session = state.session;
    heading(ui, "What the wall says");
    forget_old_fixes(ui.memory.fixes, session.version());
    // A copy, since a fix replaces the assessment.
    const std::vector<Finding> findings = session.assessment().findings;
    if (findings.empty())
        show_nothing_said(ui, "Nothing to say against this wall.", "findings/none");
    bool may_work = true;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const ScopedId id(static_cast<int>(i));
        const std::string name = fmt::format("findings/{}", i);
        finding_item(ui, session, findings[i], name);
        fix_button(ui, session, findings[i], name, may_work);
        ImGui::Dummy({0, ui.px(2)});
    }
}

}  // namespace wallwright::app
