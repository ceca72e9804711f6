#include "store/json_fields.h"

namespace wallwright::store {

namespace {

using wall::FromCorner;

template <class Io, class AnUnderLayer>
void under_fields(Io& io, AnUnderLayer& under) {
    io.may("reveal_mm", under.reveal);
    io.object("card", under.card);
    io.may("colour", under.colour);
    io.unknown(under.unknown);
}

template <class Io, class AnOpening>
void opening_fields(Io& io, AnOpening& opening) {
    io.must("print", opening.print);
    io.pair("left_mm", &FromCorner::left, "top_mm", &FromCorner::top, opening.at);
    io.unknown(opening.unknown);
}

template <class Io, class AMount>
void mount_fields(Io& io, AMount& mount) {
    const wall::Mount usual;
    io.must("id", mount.id);
    io.may("title", mount.title);
    io.may("overlap_mm", mount.overlap);
    io.usually("overlap_most_mm", mount.overlap_most, usual.overlap_most);
    io.may("base_extra_mm", mount.base_extra);
    io.may("base_ratio", mount.base_ratio);
    io.pair("window_left_mm", &FromCorner::left, "window_top_mm", &FromCorner::top, mount.by_hand);
    io.usually("border_least_mm", mount.border_least, usual.border_least);
    io.object("card", mount.card);
    io.may("colour", mount.colour);
    io.list("under", mount.under);
    io.usually("edge", mount.edge, usual.edge);
    io.may("floats", mount.floats);
    io.list("openings", mount.openings);
    io.usually("order", mount.order, usual.order);
    io.usually("bar_mm", mount.bar, usual.bar);
    io.unknown(mount.unknown);
}

template <class Io, class ACardSheet>
void sheet_fields(Io& io, ACardSheet& sheet) {
    const wall::CardSheet usual;
    io.must("id", sheet.id);
    io.may("title", sheet.title);
    io.size(sheet.size);
    io.object("card", sheet.card);
    io.may("colour", sheet.colour);
    io.usually("count", sheet.count, usual.count);
    io.may("to_buy", sheet.to_buy);
    io.usually("price", sheet.price, usual.price);
    io.may("offcut", sheet.offcut);
    io.usually("grain", sheet.grain, usual.grain);
    io.usually("margin_mm", sheet.margin, usual.margin);
    io.unknown(sheet.unknown);
}

template <class Io, class AKeptBlank>
void kept_fields(Io& io, AKeptBlank& kept) {
    const wall::KeptBlank usual;
    io.must("piece", kept.piece);
    io.usually("layer", kept.layer, usual.layer);
    io.must("sheet", kept.sheet);
    io.usually("number", kept.number, usual.number);
    io.must("left_mm", kept.left);
    io.must("top_mm", kept.top);
    io.may("turned", kept.turned);
    io.unknown(kept.unknown);
}

}  // namespace

void fields(ObjectReader& io, wall::UnderLayer& under) {
    under_fields(io, under);
}
void fields(ObjectWriter& io, const wall::UnderLayer& under) {
    under_fields(io, under);
}

void fields(ObjectReader& io, wall::Opening& opening) {
    opening_fields(io, opening);
}
void fields(ObjectWriter& io, const wall::Opening& opening) {
    opening_fields(io, opening);
}

void fields(ObjectReader& io, wall::Mount& mount) {
    mount_fields(io, mount);
}
void fields(ObjectWriter& io, const wall::Mount& mount) {
    mount_fields(io, mount);
}

void fields(ObjectReader& io, wall::CardSheet& sheet) {
    sheet_fields(io, sheet);
}
void fields(ObjectWriter& io, const wall::CardSheet& sheet) {
    sheet_fields(io, sheet);
}

void fields(ObjectReader& io, wall::KeptBlank& kept) {
    kept_fields(io, kept);
}
void fields(ObjectWriter& io, const wall::KeptBlank& kept) {
    kept_fields(io, kept);
}

}  // namespace wallwright::store
