#include "store/json_fields.h"

namespace wallwright::store {

namespace {

template <class Io, class AHanger>
void hanger_fields(Io& io, AHanger& hanger) {
    io.may("type", hanger.type);
    io.may("drop_mm", hanger.drop);
    io.may("ring_spacing_mm", hanger.ring_spacing);
    io.may("cord_length_mm", hanger.cord_length);
    io.may("hook_spacing_mm", hanger.hook_spacing);
    io.unknown(hanger.unknown);
}

template <class Io, class APiece>
void piece_fields(Io& io, APiece& piece) {
    io.must("id", piece.id);
    io.may("title", piece.title);
    io.must("frame", piece.frame);
    io.may("mount", piece.mount);
    io.may("print", piece.print);
    io.may("keeps_print", piece.keeps_print);
    io.may("mount_cut", piece.mount_cut);
    io.may("turned", piece.turned);
    io.may("state", piece.state);
    io.may("pinned", piece.pinned);
    io.may("wished", piece.wished);
    io.may("irreplaceable", piece.irreplaceable);
    io.may("stage", piece.stage);
    io.point(piece.at);
    io.object("hanger", piece.hanger);
    io.may("fixing", piece.fixing);
    io.may("weighed_kg", piece.weighed);
    io.unknown(piece.unknown);
}

}  // namespace

void fields(ObjectReader& io, wall::Hanger& hanger) {
    hanger_fields(io, hanger);
}
void fields(ObjectWriter& io, const wall::Hanger& hanger) {
    hanger_fields(io, hanger);
}

void fields(ObjectReader& io, wall::Piece& piece) {
    piece_fields(io, piece);
}
void fields(ObjectWriter& io, const wall::Piece& piece) {
    piece_fields(io, piece);
}

}  // namespace wallwright::store
