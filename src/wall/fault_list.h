// How the laws of a project are checked: the list that each check adds its faults to, and the
// checks that several of them share.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <fmt/format.h>

#include <cmath>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace wallwright::wall {

/// mm: no wall, frame or sofa is longer than 100 m.
inline constexpr double kLargest = 1e5;

/// Gathers what is wrong, each said to be at a place.
class Faults {
  public:
    void add(const std::string& where, std::string what, std::string remedy) {
        found_.push_back({where, std::move(what), std::move(remedy), ""});
    }

    void unless(bool sound, const std::string& where, std::string what, std::string remedy) {
        if (!sound)
            add(where, std::move(what), std::move(remedy));
    }

    /// A length that must be more than 0.
    void check_size(const std::string& where, double mm) {
        unless(std::isfinite(mm) && mm > 0 && mm <= kLargest, where,
               fmt::format("{:g} mm is no size", mm),
               "give a length of more than 0 and at most 100 m");
    }

    /// A length that may be 0.
    void check_length(const std::string& where, double mm) {
        unless(std::isfinite(mm) && mm >= 0 && mm <= kLargest, where,
               fmt::format("{:g} mm is out of range", mm), "give a length from 0 to 100 m");
    }

    void check_place(const std::string& where, Point<Wall> at) {
        unless(std::isfinite(at.x) && std::isfinite(at.y) && std::abs(at.x) <= kLargest &&
                   std::abs(at.y) <= kLargest,
               where, "the place is out of range",
               "give x and y within 100 m of the wall's left corner");
    }

    void check_mass(const std::string& where, Kilograms mass) {
        unless(std::isfinite(mass.value) && mass.value > 0 && mass.value <= 1000, where,
               fmt::format("{:g} kg is no weight", mass.value),
               "give a weight of more than 0 and at most 1000 kg");
    }

    /// Money that may be nothing.
    void check_price(const std::string& where, double price) {
        unless(std::isfinite(price) && price >= 0 && price <= 1e6, where,
               fmt::format("{:g} is no price", price), "give a price from 0 to 1000000");
    }

    std::vector<Problem> take() { return std::move(found_); }

  private:
    std::vector<Problem> found_;
};

/// None empty, none twice.
template <class T>
void check_ids(Faults& faults, std::string_view kind, const std::vector<T>& all) {
    std::set<std::string> seen;
    for (const T& one : all) {
        const std::string where = fmt::format("{}/{}", kind, one.id.text);
        faults.unless(!one.id.text.empty(), where, "the id is empty", "give it a short name");
        faults.unless(seen.insert(one.id.text).second, where, "the id is used twice",
                      "give one of them another id");
    }
}

/// The id is that of a thing in the project.
template <class IdType>
void check_known(Faults& faults, const Project& project, const std::string& where,
                 const IdType& id) {
    faults.unless(find(project, id) != nullptr, where,
                  fmt::format("there is no \"{}\" in the project", id.text),
                  "add it, or name one that is there");
}

/// Built-in materials are always there, so only a name is asked for; hanging/weight.h says what an
/// unknown one counts as.
void check_layer(Faults& faults, const std::string& where, const Layer& layer);

/// Mounts and prints.
void check_paper(Faults& faults, const Project& project);
/// What the wall is made of and what is true of it; fixings, their packs and prices; the datum.
void check_wall(Faults& faults, const Room& room);
void check_fixings(Faults& faults, const Project& project);
void check_datum(Faults& faults, const Project& project);
/// Sheets of card, blanks kept on them, and what it costs to have a mount cut.
void check_card(Faults& faults, const Project& project);

}  // namespace wallwright::wall
