#include "app/panels/material_row.h"
#include "app/panels/piece_parts.h"
#include "app/price_row.h"
#include "app/scoped.h"

namespace wallwright::app {

namespace {

using wall::Frame;

void number(Ui& ui, State& state, const OnePiece& one, const char* name, const char* label,
            double Frame::*value, const char* why) {
    if (const auto mm = measure_row(ui, name, label, one.frame.*value, one.unit, why))
        change_frame(state, one, "Measure the frame of",
                     [value, mm](Frame& frame) { frame.*value = *mm; });
}

void moulding_rows(Ui& ui, State& state, const OnePiece& one) {
    number(ui, state, one, "piece/moulding-width", "Moulding width", &Frame::moulding_width,
           "Of the moulding as seen from the front.");
    number(ui, state, one, "piece/depth", "Depth", &Frame::depth,
           "From the wall to the front of the moulding.");
    number(ui, state, one, "piece/lip", "Lip", &Frame::rebate_width,
           "Width of the lip that covers the edge of what is in the frame.");
    number(ui, state, one, "piece/rebate", "Rebate depth", &Frame::rebate_depth,
           "From the lip to the back of the moulding: what goes into it must be thinner.");
    if (const auto colour = colour_row(ui, "piece/colour", "Moulding colour", one.frame.colour))
        change_frame(state, one, "Paint", [colour](Frame& frame) { frame.colour = *colour; });
    if (const auto material = material_row(ui, state.session, "piece/moulding", "Moulding",
                                           one.frame.moulding, wall::MaterialUse::moulding))
        change_frame(state, one, "Change the moulding of",
                     [&material](Frame& frame) { frame.moulding = *material; });
}

struct LayerRow {
    const char* name;
    const char* thickness_name;
    const char* label;
    const char* verb;
    wall::MaterialUse use;
    wall::Layer Frame::*layer;
    double usual;  ///< mm, for a layer that there was not.
};

void layer_rows(Ui& ui, State& state, const OnePiece& one, const LayerRow& row) {
    const wall::Layer layer = one.frame.*row.layer;
    const auto part = row.layer;
    const bool there = layer.thickness > 0;
    if (const auto on = switch_row(ui, row.name, row.label, there))
        change_frame(state, one, row.verb, [part, on, usual = row.usual](Frame& frame) {
            (frame.*part).thickness = *on ? usual : 0;
        });
    if (!there)
        return;
    const ScopedId id(row.name);
    if (const auto material = material_row(ui, state.session, row.thickness_name, "   made of",
                                           layer.material, row.use))
        change_frame(state, one, row.verb,
                     [part, &material](Frame& frame) { (frame.*part).material = *material; });
    const std::string thick = std::string(row.thickness_name) + "-thickness";
    if (const auto mm = measure_row(ui, thick.c_str(), "   thickness", layer.thickness, one.unit))
        change_frame(state, one, row.verb,
                     [part, mm](Frame& frame) { (frame.*part).thickness = *mm; });
}

/// What it costs, for the list of what to buy.
void frame_price(Ui& ui, State& state, const OnePiece& one) {
    const std::optional<double> price =
        one.frame.price > 0 ? std::optional(one.frame.price) : std::nullopt;
    if (const auto typed = price_row(ui, "piece/frame-price", "Price", price,
                                     "In your own money, as in 12.50. It is added up under \"To "
                                     "buy\" as long as the frame is wished for.",
                                     "not said"))
        change_frame(state, one, "Say what the frame costs of",
                     [typed](Frame& frame) { frame.price = typed->price.value_or(0); });
}

}  // namespace

void frame_part(Ui& ui, State& state, const OnePiece& one) {
    moulding_rows(ui, state, one);
    layer_rows(ui, state, one,
               {"piece/has-glazing", "piece/glazing", "Glazing", "Change the glazing of",
                wall::MaterialUse::glazing, &Frame::glazing, 2});
    layer_rows(ui, state, one,
               {"piece/has-backing", "piece/backing", "Backing", "Change the backing of",
                wall::MaterialUse::backing, &Frame::backing, 2.5});
    frame_price(ui, state, one);
}

}  // namespace wallwright::app
