// What must be true of the wall as fixings meet it, of these, and of what marks are measured from.
#include "wall/fault_list.h"

namespace wallwright::wall {

namespace {

constexpr int kMostInAPack = 1000;
constexpr int kMostInADrawer = 100'000;

void check_studs(Faults& faults, const Studs& studs) {
    faults.check_place("room/studs/first_mm", {studs.first, 0});
    faults.check_size("room/studs/spacing_mm", studs.spacing);
    faults.check_size("room/studs/width_mm", studs.width);
    faults.unless(
        studs.spacing >= 100 && studs.width < studs.spacing, "room/studs/spacing_mm",
        fmt::format("studs of {:g} mm every {:g} mm are out of range", studs.width, studs.spacing),
        "give the distance from middle to middle, at least 100 mm and more than a stud "
        "is wide");
}

void check_pack(Faults& faults, const std::string& where, int pack) {
    faults.unless(pack >= 1 && pack <= kMostInAPack, where, fmt::format("{} is no pack", pack),
                  fmt::format("count what is sold together, from 1 to {}", kMostInAPack));
}

void check_nails(Faults& faults, const std::string& where, const Nails& nails) {
    faults.unless(nails.count >= 1 && nails.count <= 10, where + "/count",
                  fmt::format("{} is no number of nails", nails.count), "count them, from 1 to 10");
    faults.check_size(where + "/diameter_mm", nails.diameter);
    faults.check_size(where + "/length_mm", nails.length);
}

void check_type(Faults& faults, const FixingType& fixing) {
    const std::string where = "own/fixings/" + fixing.id.text;
    faults.check_mass(where + "/rated_kg", fixing.rated);
    faults.check_size(where + "/width_mm", fixing.footprint.width);
    faults.check_size(where + "/height_mm", fixing.footprint.height);
    check_pack(faults, where + "/pack", fixing.pack);
    faults.check_price(where + "/price", fixing.price);
    if (fixing.nails)
        check_nails(faults, where + "/nails", *fixing.nails);
}

void check_ends(Faults& faults, const std::string& where, const EndHeights& ends) {
    faults.check_length(where + "_left_mm", ends.left);
    faults.check_length(where + "_right_mm", ends.right);
}

}  // namespace

void check_wall(Faults& faults, const Room& room) {
    constexpr int kFirstYear = 1000;
    constexpr int kLastYear = 2999;
    if (room.studs)
        check_studs(faults, *room.studs);
    if (room.thickness)
        faults.check_size("room/thickness_mm", *room.thickness);
    if (room.rail)
        faults.check_size("room/rail_mm", *room.rail);
    if (room.built)
        faults.unless(*room.built >= kFirstYear && *room.built <= kLastYear, "room/built",
                      fmt::format("{} is no year", *room.built),
                      "give the year of the house or of its coatings, such as 1965");
}

void check_fixings(Faults& faults, const Project& project) {
    for (const FixingType& fixing : project.own.fixings)
        check_type(faults, fixing);
    for (const Stock& stock : project.stock) {
        const std::string where = "stock/" + stock.fixing.text;
        faults.unless(stock.count >= 0, where, "the count is less than 0",
                      "count what is in the drawer");
        faults.unless(stock.count <= kMostInADrawer, where,
                      fmt::format("{} is no count", stock.count),
                      fmt::format("count what is in the drawer, at most {}", kMostInADrawer));
        if (stock.pack)
            check_pack(faults, where + "/pack", *stock.pack);
        if (stock.price)
            faults.check_price(where + "/price", *stock.price);
    }
    if (project.tape_price)
        faults.check_price("tape_price", *project.tape_price);
    if (project.cord_price)
        faults.check_price("cord_price", *project.cord_price);
}

void check_datum(Faults& faults, const Project& project) {
    const Datum& datum = project.datum;
    faults.check_place("datum/level_line_mm", {0, datum.level_line});
    if (datum.piece)
        check_known(faults, project, "datum/piece", *datum.piece);
    faults.unless(datum.piece.has_value() || datum.height != DatumHeight::piece, "datum/piece",
                  "marks are to be measured from a piece, and it is not said from which",
                  "name a piece that hangs, or measure from the floor");
    if (datum.floor)
        check_ends(faults, "datum/floor_to_line", *datum.floor);
    if (datum.ceiling)
        check_ends(faults, "datum/ceiling_to_line", *datum.ceiling);
}

}  // namespace wallwright::wall
