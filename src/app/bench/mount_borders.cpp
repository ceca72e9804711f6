// The window's overlap, and the borders around it as seen and as cut.
#include "app/bench/mount_parts.h"
#include "app/scoped.h"
#include "app/text_field.h"
#include "desk/bench/mount_part.h"
#include "desk/bench/mount_places.h"
#include "desk/bench/mount_tool.h"
#include "edits/mounts.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace wallwright::app {

namespace {

using edits::BaseRule;
using mounts::Borders;
using mounts::MountDesign;
using wall::FromCorner;
using wall::Mount;

constexpr double kUsualExtra = 10;    // mm; a base wider by some 10 mm, our choice
constexpr double kUsualRatio = 1.15;  // our choice

void length(Ui& ui, State& state, const OneMount& it, const char* name, const char* label,
            double Mount::*value, const char* why) {
    if (const auto mm = length_row(ui, name, label, it.mount.*value, it.one.unit, why))
        change_mount(state, it, "Measure", [value, mm](Mount& mount) { mount.*value = *mm; });
}

void overlap_rows(Ui& ui, State& state, const OneMount& it) {
    if (it.mount.floats)
        return;
    length(ui, state, it, "mount/overlap", "Overlap", &Mount::overlap,
           "By which the window covers the print on each side.");
    length(ui, state, it, "mount/overlap-most", "   may grow to", &Mount::overlap_most,
           "Where the borders would else be too thin: what may be lost of the picture on each "
           "side.");
    if (!it.design)
        return;
    const mounts::LaidPrint& print = it.design->prints.front();
    const bool grew = print.across > it.mount.overlap + geometry::kLengthEps ||
                      print.down > it.mount.overlap + geometry::kLengthEps;
    if (grew)
        value_row(ui, "   has grown to",
                  fmt::format("{}, {}", units::format_number(print.across, it.one.unit),
                              units::format_length(print.down, it.one.unit)),
                  "At the sides, and above and below.");
}

void place_by_hand(State& state, const OneMount& it, const std::vector<FromCorner>& corners) {
    state.session.apply(fmt::format("Place the window of {} by hand", it.one.title),
                        edits::place_windows(state.session.kept(), it.mount.id, corners));
}

void set_base(State& state, const OneMount& it, BaseRule rule, double amount) {
    state.session.apply(fmt::format("Place the window of {}", it.one.title),
                        edits::set_base(state.session.kept(), it.mount.id, rule, amount));
}

/// In the order of the words in base_rows.
enum class Placed { even, wider_by, by_ratio, by_hand };

Placed placed(const Mount& mount) {
    if (desk::is_by_hand(mount))
        return Placed::by_hand;
    if (mount.base_ratio)
        return Placed::by_ratio;
    return mount.base_extra == 0 ? Placed::even : Placed::wider_by;
}

void choose(State& state, const OneMount& it, Placed chosen) {
    switch (chosen) {
        case Placed::even:
            return set_base(state, it, BaseRule::even, 0);
        case Placed::wider_by:
            return set_base(state, it, BaseRule::wider_by, kUsualExtra);
        case Placed::by_ratio:
            return set_base(state, it, BaseRule::by_ratio, kUsualRatio);
        case Placed::by_hand:
            if (it.design)
                place_by_hand(state, it, desk::corners_of(*it.design));
    }
}

Result<double> read_ratio(const std::string& text) {
    double ratio = 0;
    const auto [stop, error] = std::from_chars(text.data(), text.data() + text.size(), ratio);
    if (error != std::errc() || stop != text.data() + text.size() || ratio < 1 || ratio > 3)
        return fail({"", fmt::format("\"{}\" is no such ratio", text),
                     "type a number from 1 to 3, as in 1.2", ""});
    return ratio;
}

void base_rows(Ui& ui, State& state, const OneMount& it) {
    const std::vector<std::string> words{"even", "wider below", "by ratio", "by hand"};
    const Placed now = placed(it.mount);
    if (const auto chosen = choice_row(ui, "mount/placed", "Borders", static_cast<int>(now), words,
                                       "How what the window leaves of the card is split above and "
                                       "below it."))
        choose(state, it, static_cast<Placed>(*chosen));
    if (now == Placed::wider_by)
        if (const auto mm =
                length_row(ui, "mount/base-extra", "   wider below by", it.mount.base_extra,
                           it.one.unit, "By which the border below is wider than the one above."))
            set_base(state, it, BaseRule::wider_by, *mm);
    if (now == Placed::by_ratio)
        if (const auto ratio = typed_row(
                ui, "   below over above",
                {"mount/base-ratio", fmt::format("{:.3g}", *it.mount.base_ratio), ""},
                field_width(ui), "The border below over the border above, as cut; from 1 to 3.",
                read_ratio))
            set_base(state, it, BaseRule::by_ratio, *ratio);
    if (now == Placed::by_hand &&
        button(ui, "mount/centre", "Centre it again",
               "The window goes by the borders' rule again; so does a double click on it.",
               ButtonLook::plain, -1))
        desk::centre_windows(state.session, it.one.piece.id);
}

/// One of the four borders.
struct Side {
    const char* name;
    const char* label;
    double Borders::*border;
};

constexpr Side kSides[] = {{"left", "Left", &Borders::left},
                           {"right", "Right", &Borders::right},
                           {"top", "Above", &Borders::top},
                           {"bottom", "Below", &Borders::bottom}};

constexpr float kFigure = 84;  // px at a scale of 1

std::optional<double> figure(Ui& ui, const std::string& name, double mm, units::LengthUnit unit) {
    const auto typed =
        text_field(ui, {name.c_str(), units::format_length(mm, unit), ""}, ui.px(kFigure));
    if (!typed)
        return std::nullopt;
    auto read = units::parse_length(*typed, unit);
    if (read)
        close_field(ui, name.c_str());
    else
        keep_field(ui, name.c_str(), read.error());
    return read ? std::optional(*read) : std::nullopt;
}

/// Every window goes so far that this border is as wide as was typed.
void widen(State& state, const OneMount& it, const Side& side, double more) {
    place_by_hand(state, it, desk::corners_for_border(*it.design, side.border, more));
}

void border_row(Ui& ui, State& state, const OneMount& it, const Side& side) {
    const MountDesign& design = *it.design;
    const std::string seen = fmt::format("mount/seen-{}", side.name);
    const std::string cut = fmt::format("mount/cut-{}", side.name);
    {
        const Row row(ui, side.label, 2 * ui.px(kFigure) + ui.px(6),
                      "Type over it to place the window by hand.");
        if (const auto mm = figure(ui, seen, design.seen.*side.border, it.one.unit))
            widen(state, it, side, *mm - design.seen.*side.border);
        ImGui::SameLine(0, ui.px(6));
        if (const auto mm = figure(ui, cut, design.cut.*side.border, it.one.unit))
            widen(state, it, side, *mm - design.cut.*side.border);
    }
    show_reason(ui, seen.c_str());
    show_reason(ui, cut.c_str());
}

/// Over the two columns of figures.
void border_heads(Ui& ui) {
    const float right = ImGui::GetCursorPosX() + ImGui::GetContentRegionAvail().x;
    const ScopedColour quiet(ImGuiCol_Text, ui.theme().quiet_text);
    const ScopedFont small(ui.fonts.small);
    const float padding = ImGui::GetStyle().FramePadding.x;
    const auto head = [&](const char* words, float end) {
        ImGui::SetCursorPosX(end - padding - ImGui::CalcTextSize(words).x);
        ImGui::TextUnformatted(words);
    };
    head("as seen", right - ui.px(kFigure + 6));
    ImGui::SameLine();
    head("as cut", right);
}

void window_rows(Ui& ui, const OneMount& it) {
    const units::LengthUnit unit = it.one.unit;
    for (std::size_t i = 0; i < desk::window_count(*it.design); ++i) {
        const auto window = desk::window_at(*it.design, i);
        const std::string label = desk::window_count(*it.design) == 1
                                      ? std::string(it.mount.floats ? "Print" : "Window")
                                      : fmt::format("Window {}", i + 1);
        value_row(ui, label.c_str(),
                  fmt::format("{} × {}", units::format_number(window.width(), unit),
                              units::format_length(window.height(), unit)),
                  "At the face of the top layer.");
    }
}

void edge_rows(Ui& ui, State& state, const OneMount& it) {
    if (const auto on = switch_row(ui, "mount/floats", "Print lies on the card", it.mount.floats,
                                   "No window: its edges are in sight, and it floats."))
        change_mount(state, it, *on ? "Close" : "Open", [on](Mount& mount) { mount.floats = *on; });
    if (it.mount.floats)
        return;
    const std::vector<std::string> words{"bevel", "straight"};
    if (const auto edge =
            choice_row(ui, "mount/edge", "Edge of the window", static_cast<int>(it.mount.edge),
                       words, "A bevel of 45 degrees shows the white core all round."))
        change_mount(state, it, "Cut",
                     [edge](Mount& mount) { mount.edge = static_cast<wall::WindowEdge>(*edge); });
}

}  // namespace

void mount_borders(Ui& ui, State& state, const OneMount& it) {
    overlap_rows(ui, state, it);
    base_rows(ui, state, it);
    if (it.design) {
        border_heads(ui);
        for (const Side& side : kSides)
            border_row(ui, state, it, side);
    } else {
        hint(ui, "Its borders follow when there is a print behind it.");
    }
    length(ui, state, it, "mount/border-least", "Borders at least", &Mount::border_least,
           "As seen, on each side; rather than less the overlap grows.");
    if (it.design)
        window_rows(ui, it);
    edge_rows(ui, state, it);
}

}  // namespace wallwright::app
