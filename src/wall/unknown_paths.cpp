#include "wall/validity.h"

#include <fmt/format.h>

namespace wallwright::wall {

namespace {

void add(std::vector<std::string>& paths, const std::string& place, const UnknownKeys& unknown) {
    for (const auto& [key, value] : unknown)
        paths.push_back(place.empty() ? key : fmt::format("{}/{}", place, key));
}

template <class T>
void add_all(std::vector<std::string>& paths, const std::string& place, const std::vector<T>& all) {
    for (const T& one : all)
        add(paths, fmt::format("{}/{}", place, one.id.text), one.unknown);
}

/// Parts without an id of their own, by their number.
template <class T>
void add_numbered(std::vector<std::string>& paths, const std::string& place,
                  const std::vector<T>& all) {
    for (std::size_t i = 0; i < all.size(); ++i)
        add(paths, fmt::format("{}/#{}", place, i + 1), all[i].unknown);
}

}  // namespace

std::vector<std::string> unknown_paths(const Project& project) {
    std::vector<std::string> paths;
    add(paths, "", project.unknown);
    add(paths, "room", project.room.unknown);
    add_all(paths, "room/furniture", project.room.furniture);
    add_all(paths, "room/fixtures", project.room.fixtures);
    if (project.room.studs)
        add(paths, "room/studs", project.room.studs->unknown);
    add(paths, "style", project.style.unknown);
    add_all(paths, "frames", project.frames);
    add_all(paths, "mounts", project.mounts);
    for (const Mount& mount : project.mounts) {
        add_numbered(paths, fmt::format("mounts/{}/under", mount.id.text), mount.under);
        add_numbered(paths, fmt::format("mounts/{}/openings", mount.id.text), mount.openings);
    }
    add_all(paths, "prints", project.prints);
    add_all(paths, "pieces", project.pieces);
    for (const Piece& piece : project.pieces)
        add(paths, fmt::format("pieces/{}/hanger", piece.id.text), piece.hanger.unknown);
    for (const Stock& stock : project.stock)
        add(paths, "stock/" + stock.fixing.text, stock.unknown);
    add_all(paths, "card", project.card);
    add_numbered(paths, "kept_blanks", project.kept_blanks);
    add_numbered(paths, "wishes", project.wishes);
    add(paths, "target", project.target_unknown);
    for (const MeasureWeight& one : project.weights)
        add(paths, "weights/" + one.measure, one.unknown);
    add_all(paths, "own/materials", project.own.materials);
    add_all(paths, "own/fixings", project.own.fixings);
    for (const FixingType& fixing : project.own.fixings)
        if (fixing.nails)
            add(paths, fmt::format("own/fixings/{}/nails", fixing.id.text), fixing.nails->unknown);
    return paths;
}

}  // namespace wallwright::wall
