#include "wall/project.h"

#include "base/contract.h"
#include "wall/find_in.h"

#include <algorithm>

namespace wallwright::wall {

namespace {

template <class T>
void put(std::vector<T>& into, const T& record) {
    if (T* found = find_in(into, record.id))
        *found = record;
    else
        into.push_back(record);
}

void put_size(std::vector<NamedSize>& into, const NamedSize& record) {
    std::erase_if(into, [&record](const NamedSize& one) { return one.name == record.name; });
    into.push_back(record);
}

}  // namespace

const Material* find(const Catalogue& catalogue, const MaterialId& id) {
    return find_in(catalogue.materials, id);
}

const FixingType* find(const Catalogue& catalogue, const FixingTypeId& id) {
    return find_in(catalogue.fixings, id);
}

bool suits(const Material& material, MaterialUse use) {
    return material.uses.empty() || std::ranges::find(material.uses, use) != material.uses.end();
}

Catalogue with_own(Catalogue general, const Catalogue& own) {
    for (const Material& material : own.materials)
        put(general.materials, material);
    for (const FixingType& fixing : own.fixings)
        put(general.fixings, fixing);
    for (const NamedSize& size : own.sizes)
        put_size(general.sizes, size);
    return general;
}

bool has_stop(const std::vector<Finding>& findings) {
    return std::any_of(findings.begin(), findings.end(),
                       [](const Finding& finding) { return finding.severity == Severity::stop; });
}

const Piece* find(const Project& project, const PieceId& id) {
    return find_in(project.pieces, id);
}
const Frame* find(const Project& project, const FrameId& id) {
    return find_in(project.frames, id);
}
const Mount* find(const Project& project, const MountId& id) {
    return find_in(project.mounts, id);
}
const Print* find(const Project& project, const PrintId& id) {
    return find_in(project.prints, id);
}
const CardSheet* find(const Project& project, const CardSheetId& id) {
    return find_in(project.card, id);
}
const Furniture* find(const Project& project, const FurnitureId& id) {
    return find_in(project.room.furniture, id);
}
const Fixture* find(const Project& project, const FixtureId& id) {
    return find_in(project.room.fixtures, id);
}

const Frame& frame_of(const Project& project, const Piece& piece) {
    const Frame* frame = find(project, piece.frame);
    WW_EXPECT(frame != nullptr, "every piece has its frame in the project");
    return *frame;
}

std::vector<const Print*> prints_in(const Project& project, const Piece& piece) {
    std::vector<const Print*> prints;
    const auto add = [&](const PrintId& id) {
        if (const Print* print = find(project, id))
            prints.push_back(print);
    };
    const Mount* mount = piece.mount ? find(project, *piece.mount) : nullptr;
    if (mount != nullptr && !mount->openings.empty())
        for (const Opening& opening : mount->openings)
            add(opening.print);
    else if (piece.print)
        add(*piece.print);
    return prints;
}

Size outside_size(const Project& project, const Piece& piece) {
    return outside_size(frame_of(project, piece), piece);
}

Size outside_size(const Frame& frame, const Piece& piece) {
    return piece.turned ? frame.outside.turned() : frame.outside;
}

std::optional<Rect<Wall>> place_of(const Project& project, const Piece& piece) {
    if (piece.state == PieceState::waiting || !piece.at)
        return std::nullopt;
    return Rect<Wall>::at(*piece.at, outside_size(project, piece));
}

Core core_of(const Room& room) {
    if (room.core != Core::unknown)
        return room.core;
    switch (room.surface) {
        case Surface::brick:
            return Core::masonry;
        case Surface::concrete:
            return Core::concrete;
        case Surface::wood:
            return Core::wood;
        case Surface::painted:
        case Surface::fresh_paint:
        case Surface::wallpaper:
        case Surface::textured:
        case Surface::tile:
            break;
    }
    return Core::unknown;
}

bool is_hollow(Core core) {
    return core == Core::plasterboard || core == Core::lath;
}

std::optional<Rect<Wall>> datum_place(const Project& project) {
    const Datum& datum = project.datum;
    const Piece* piece = datum.piece ? find(project, *datum.piece) : nullptr;
    if (datum.height != DatumHeight::piece || piece == nullptr)
        return std::nullopt;
    return place_of(project, *piece);
}

bool is_fixed(const Piece& piece) {
    return piece.state == PieceState::hung || piece.pinned;
}

std::vector<Placed> placed_pieces(const Project& project) {
    std::vector<Placed> placed;
    for (const Piece& piece : project.pieces)
        if (const auto place = place_of(project, piece))
            placed.push_back({piece.id, *place, is_fixed(piece), piece.title});
    return placed;
}

}  // namespace wallwright::wall
