#include "store/json_fields.h"

namespace wallwright::store {

namespace {

template <class Io, class ALayer>
void layer_fields(Io& io, ALayer& layer) {
    io.may("material", layer.material);
    io.may("thickness_mm", layer.thickness);
    io.unknown(layer.unknown);
}

template <class Io, class AFrame>
void frame_fields(Io& io, AFrame& frame) {
    io.must("id", frame.id);
    io.may("title", frame.title);
    io.size(frame.outside);
    io.may("depth_mm", frame.depth);
    io.may("moulding_width_mm", frame.moulding_width);
    io.may("rebate_width_mm", frame.rebate_width);
    io.may("rebate_depth_mm", frame.rebate_depth);
    io.pair("back_board_width_mm", &wall::Size::width, "back_board_height_mm", &wall::Size::height,
            frame.back_board);
    io.may("moulding", frame.moulding);
    io.object("glazing", frame.glazing);
    io.object("backing", frame.backing);
    io.may("colour", frame.colour);
    io.may("rough_back", frame.rough_back);
    io.usually("price", frame.price, wall::Frame{}.price);
    io.unknown(frame.unknown);
}

template <class Io, class APrint>
void print_fields(Io& io, APrint& print) {
    io.must("id", print.id);
    io.may("title", print.title);
    io.size(print.size);
    io.may("grams_per_m2", print.grams_per_square_metre);
    io.may("colour", print.colour);
    io.may("picture", print.picture);
    io.pair("pixels_wide", &wall::PixelSize::width, "pixels_high", &wall::PixelSize::height,
            print.pixels);
    io.unknown(print.unknown);
}

}  // namespace

void fields(ObjectReader& io, wall::Layer& layer) {
    layer_fields(io, layer);
}
void fields(ObjectWriter& io, const wall::Layer& layer) {
    layer_fields(io, layer);
}

void fields(ObjectReader& io, wall::Frame& frame) {
    frame_fields(io, frame);
}
void fields(ObjectWriter& io, const wall::Frame& frame) {
    frame_fields(io, frame);
}

void fields(ObjectReader& io, wall::Print& print) {
    print_fields(io, print);
}
void fields(ObjectWriter& io, const wall::Print& print) {
    print_fields(io, print);
}

}  // namespace wallwright::store
