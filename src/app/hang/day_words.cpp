#include "app/hang/day_words.h"

#include "app/panels/findings_sign.h"
#include "app/row.h"
#include "app/scoped.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::app {

namespace {

using desk::Companion;
using desk::DeedFigure;
using desk::DeedWords;

// px at a scale of 1.
constexpr float kLeastNumber = 44;  ///< Read at 2 m: about 40 px on a usual screen.
constexpr float kMostNumber = 88;   ///< As the letters are built.

void wrapped(ImFont* font, ImU32 colour, const std::string& words) {
    const ScopedFont scoped(font);
    const ScopedColour ink(ImGuiCol_Text, colour);
    const ScopedWrap wrap;
    ImGui::TextUnformatted(words.c_str());
}

std::string progress_words(const Companion& day) {
    const auto [mark, marks] = day.mark_of_marks();
    const auto [piece, pieces] = day.piece_of_pieces();
    std::string words = day.stage() > 0 ? fmt::format("Stage {}  ·  ", day.stage()) : "";
    if (day.now()->kind == desk::DeedKind::line)
        return fmt::format("{}{} marks, {} {} today", words, marks, pieces,
                           pieces == 1 ? "piece" : "pieces");
    if (day.now()->kind == desk::DeedKind::mark)
        words += fmt::format("mark {} of {}, ", mark, marks);
    words += fmt::format("piece {} of {}", piece, pieces);
    words[0] = words[0] == 'm' ? 'M' : words[0] == 'p' ? 'P' : words[0];
    return words;
}

/// As large as the width and the height allow; both numbers alike.
float number_size(const Ui& ui, const std::vector<DeedFigure>& figures, float width, float height) {
    float size = std::clamp(0.17F * height, ui.px(kLeastNumber), ui.px(kMostNumber));
    for (const DeedFigure& figure : figures) {
        const float unit = width_in(ui.fonts.title, figure.unit) + ui.px(10);
        const float wide = ui.fonts.huge->CalcTextSizeA(size, FLT_MAX, 0, figure.number.c_str()).x;
        if (wide + unit > width)
            size *= std::max(0.2F, (width - unit) / wide);
    }
    return size;
}

/// The unit stands on the number's base line, its tolerance beside it where there is room.
void show_figure(Ui& ui, const DeedFigure& figure, float size, const std::string& name) {
    const Theme& theme = ui.theme();
    wrapped(ui.fonts.title, theme.quiet_text, figure.label);
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float right = at.x + ImGui::GetContentRegionAvail().x;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    // The line of a font is higher than its numbers; what is above and below them is left out.
    const float ascent = ui.fonts.huge->Ascent * size / ui.fonts.huge->FontSize;
    const float capitals = ui.fonts.capitals * size;
    const float base = at.y + capitals + ui.px(4);
    list.AddText(ui.fonts.huge, size, {at.x, base - ascent}, theme.text, figure.number.c_str());
    float x = at.x + ui.fonts.huge->CalcTextSizeA(size, FLT_MAX, 0, figure.number.c_str()).x;
    ui.probe.note_box(name, {at.x, base - capitals}, {x, base});
    x += ui.px(8);
    const auto beside = [&](ImFont* font, ImU32 colour, const std::string& words) {
        list.AddText(font, font->FontSize, {x, base - font->Ascent}, colour, words.c_str());
        x += width_in(font, words) + ui.px(12);
    };
    beside(ui.fonts.title, theme.text, figure.unit);
    const bool fits = x + width_in(ui.fonts.body, figure.tolerance) <= right;
    if (fits)
        beside(ui.fonts.body, theme.quiet_text, figure.tolerance);
    ImGui::Dummy({1, base - at.y + ui.px(8)});
    if (!fits)
        wrapped(ui.fonts.body, theme.quiet_text, figure.tolerance);
}

void show_said(const Ui& ui, wall::Severity severity, const std::string& words) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    draw_sign(*ImGui::GetWindowDrawList(), {at.x + ui.px(9), at.y + ui.px(10)}, ui.px(8), severity,
              ui.theme());
    ImGui::Indent(ui.px(kSaidAt));
    wrapped(ui.fonts.body, severity == wall::Severity::stop ? ui.theme().stop : ui.theme().mind,
            words);
    ImGui::Unindent(ui.px(kSaidAt));
}

void show_deed(Ui& ui, const State& state, float height) {
    const Companion& day = state.day;
    const Theme& theme = ui.theme();
    const DeedWords words = words_of(day, *day.now());
    wrapped(ui.fonts.body, theme.quiet_text,
            progress_words(day) + (day.is_done(day.at()) ? "  ·  done" : ""));
    ui.probe.note("day/progress");
    if (!words.piece.empty())
        wrapped(ui.fonts.large, theme.text, words.piece);
    wrapped(words.piece.empty() ? ui.fonts.large : ui.fonts.title, theme.accent, words.task);
    ui.probe.note("day/task");
    for (const std::string& stop : words.stops)
        show_said(ui, wall::Severity::stop, stop);
    ImGui::Dummy({0, ui.px(4)});
    const float size = number_size(ui, words.figures, ImGui::GetContentRegionAvail().x, height);
    for (std::size_t i = 0; i < words.figures.size(); ++i)
        show_figure(ui, words.figures[i], size, i == 0 ? "day/across" : "day/up");
    for (const std::string& check : words.checks)
        wrapped(ui.fonts.bold, theme.text, check);
    for (const std::string& line : words.lines)
        wrapped(ui.fonts.body, theme.text, line);
    for (const std::string& caution : words.cautions)
        show_said(ui, wall::Severity::mind, caution);
}

void show_nothing_to_do(Ui& ui, const Companion& day) {
    wrapped(ui.fonts.large, ui.theme().text, "There is nothing to hang.");
    std::string why = "No piece that is bought is planned on the wall. Place one in Arrange.";
    if (!day.without_fixing().empty())
        why = fmt::format("{} cannot go up: no fixing carries it. See what the wall says below.",
                          wall::titles_of(*day.before(), day.without_fixing(), 3));
    wrapped(ui.fonts.title, ui.theme().quiet_text, why);
    ui.probe.note("day/nothing");
}

void show_end(Ui& ui, const Companion& day) {
    const Theme& theme = ui.theme();
    const std::size_t pieces = day.today().size();
    wrapped(ui.fonts.large, theme.good,
            pieces == 1 ? std::string("It hangs.") : fmt::format("All {} pieces hang.", pieces));
    ui.probe.note("day/end");
    const auto later = day.later();
    wrapped(ui.fonts.title, theme.text,
            later.empty() ? "Nothing is left to hang."
                          : fmt::format("Stage {} is for later: {}.", later.front().stage,
                                        wall::titles_of(*day.before(), later.front().pieces, 4)));
    if (!day.not_bought().empty())
        wrapped(ui.fonts.body, theme.quiet_text,
                fmt::format("Not bought yet: {}.",
                            wall::titles_of(*day.before(), day.not_bought(), 4)));
    wrapped(ui.fonts.body, theme.quiet_text,
            "Step back, look, and set each straight. Rub the marks and the level line out.");
}

}  // namespace

void day_words(Ui& ui, const State& state, const ScreenArea& area) {
    ImGui::SetCursorScreenPos({static_cast<float>(area.min.x), static_cast<float>(area.min.y)});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(16), ui.px(8)});
    ImGui::BeginChild("day words",
                      {static_cast<float>(area.width()), static_cast<float>(area.height())}, false,
                      ImGuiWindowFlags_AlwaysUseWindowPadding | keys_for_fields());
    ImGui::PopStyleVar();
    // Another deed begins at its top.
    int& before = *ImGui::GetStateStorage()->GetIntRef(ImGui::GetID("deed"), -1);
    const int now = static_cast<int>(state.day.at());
    if (std::exchange(before, now) != now)
        ImGui::SetScrollY(0);
    if (state.day.now() != nullptr)
        show_deed(ui, state, static_cast<float>(area.height()));
    else if (state.day.deeds().empty())
        show_nothing_to_do(ui, state.day);
    else
        show_end(ui, state.day);
    ImGui::EndChild();
}

}  // namespace wallwright::app
