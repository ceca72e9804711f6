// The frame as far as the mount depends on it.
#include "app/bench/mount_parts.h"
#include "app/bench/size_words.h"
#include "app/text_field.h"
#include "mounts/window.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::Frame;
using wall::Size;

/// As it hangs to how the frame is recorded, and back.
Size upright(Size size, bool turned) {
    return turned ? size.turned() : size;
}

void number(Ui& ui, State& state, const OnePiece& one, const char* name, const char* label,
            double Frame::*value, const char* why) {
    if (const auto mm = measure_row(ui, name, label, one.frame.*value, one.unit, why))
        change_frame(state, one, "Measure the frame of",
                     [value, mm](Frame& frame) { frame.*value = *mm; });
}

void back_board_row(Ui& ui, State& state, const OnePiece& one) {
    const bool turned = one.piece.turned;
    const auto& measured = one.frame.back_board;
    const std::string shown = measured ? size_words(upright(*measured, turned), one.unit) : "";
    const std::string empty =
        size_words(mounts::blank_size(mounts::as_hung(one.frame, turned)), one.unit);
    const float width = width_in(ui.fonts.body, empty) + ui.px(22);
    const auto typed = typed_row(
        ui, "Back board", {"mount/back-board", shown, empty}, std::max(field_width(ui), width),
        "As you measured it: the usual template for what goes into the frame. Empty: worked out "
        "from the rebate.",
        [unit = one.unit](const std::string& text) -> Result<std::optional<Size>> {
            if (text.find_first_not_of(' ') == std::string::npos)
                return std::optional<Size>();
            return units::parse_size_pair(text, unit).map([](units::SizeText read) {
                return std::optional(Size{read.width_mm, read.height_mm});
            });
        });
    if (!typed)
        return;
    change_frame(state, one, "Measure the back board of", [&typed, turned](Frame& frame) {
        frame.back_board.reset();
        if (*typed)
            frame.back_board = upright(**typed, turned);
    });
}

}  // namespace

void mount_frame(Ui& ui, State& state, const OnePiece& one) {
    const bool turned = one.piece.turned;
    if (const auto size =
            size_row(ui, "mount/outside", "Outside", wall::outside_size(one.frame, one.piece),
                     one.unit, "Width and height over the moulding, as it hangs."))
        change_frame(state, one, "Resize",
                     [size, turned](Frame& frame) { frame.outside = upright(*size, turned); });
    number(ui, state, one, "mount/moulding", "Moulding width", &Frame::moulding_width,
           "Of the moulding as seen from the front.");
    number(ui, state, one, "mount/lip", "Lip", &Frame::rebate_width,
           "Width of the lip that covers the edge of the mount.");
    number(
        ui, state, one, "mount/rebate", "Rebate depth", &Frame::rebate_depth,
        "From the lip to the back of the moulding: glazing, mount, print and backing lie in it.");
    back_board_row(ui, state, one);
}

}  // namespace wallwright::app
