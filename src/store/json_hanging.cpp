#include "store/json_fields.h"

namespace wallwright::store {

namespace {

template <class Io, class AStyle>
void style_fields(Io& io, AStyle& style) {
    const wall::HangingStyle usual;
    for (const wall::StyleField& field : wall::style_fields()) {
        if (field.joined_later)
            io.usually(field.key, style.*field.value, usual.*field.value);
        else
            io.may(field.key, style.*field.value);
    }
    io.unknown(style.unknown);
}

template <class Io, class AStock>
void stock_fields(Io& io, AStock& stock) {
    io.must("fixing", stock.fixing);
    io.must("count", stock.count);
    io.may("pack", stock.pack);
    io.may("price", stock.price);
    io.unknown(stock.unknown);
}

template <class Io, class ADatum>
void datum_fields(Io& io, ADatum& datum) {
    io.may("height", datum.height);
    io.may("side", datum.side);
    io.may("level_line_mm", datum.level_line);
    io.may("piece", datum.piece);
    using wall::EndHeights;
    io.pair("floor_to_line_left_mm", &EndHeights::left, "floor_to_line_right_mm",
            &EndHeights::right, datum.floor);
    io.pair("ceiling_to_line_left_mm", &EndHeights::left, "ceiling_to_line_right_mm",
            &EndHeights::right, datum.ceiling);
    io.unknown(datum.unknown);
}

}  // namespace

void fields(ObjectReader& io, wall::HangingStyle& style) {
    style_fields(io, style);
}
void fields(ObjectWriter& io, const wall::HangingStyle& style) {
    style_fields(io, style);
}

void fields(ObjectReader& io, wall::Stock& stock) {
    stock_fields(io, stock);
}
void fields(ObjectWriter& io, const wall::Stock& stock) {
    stock_fields(io, stock);
}

void fields(ObjectReader& io, wall::Datum& datum) {
    datum_fields(io, datum);
}
void fields(ObjectWriter& io, const wall::Datum& datum) {
    datum_fields(io, datum);
}

}  // namespace wallwright::store
