// What can be bought and what it is made of: materials, fixings, sizes. Each record keeps the
// source of its numbers.
#pragma once

#include "wall/piece.h"

#include <string>
#include <vector>

namespace wallwright::wall {

/// A part of a frame by what it is made of.
enum class MaterialUse { moulding, glazing, backing };
template <>
struct Names<MaterialUse> {
    static constexpr std::string_view values[] = {"moulding", "glazing", "backing"};
};

struct Material {
    MaterialId id;
    std::string title;
    double density_low = 0;   ///< kg/m3
    double density_high = 0;  ///< kg/m3, not below density_low.
    std::string source;
    std::vector<MaterialUse> uses = {};  ///< What it is sold for; empty where nobody said.
    UnknownKeys unknown = {};
    bool operator==(const Material&) const = default;
};

/// strip_pair: two halves that lock into each other, one on the frame and one on the wall.
/// nail_hook: a picture hook nailed on. screw: with the plug its wall needs. rail_hook: hangs on a
/// picture rail, with a cord down to the piece.
enum class FixingKind { strip_pair, nail_hook, screw, rail_hook };
template <>
struct Names<FixingKind> {
    static constexpr std::string_view values[] = {"strip_pair", "nail_hook", "screw", "rail_hook"};
};

/// The nails of a hook, for what they resist when pulled straight out of wood.
struct Nails {
    int count = 1;
    double diameter = 0;  ///< mm
    double length = 0;    ///< mm of each that go into the wall.
    UnknownKeys unknown = {};
    bool operator==(const Nails&) const = default;
};

struct FixingType {
    FixingTypeId id;
    std::string title;
    FixingKind kind = FixingKind::strip_pair;
    Kilograms rated;  ///< For one pair of strips, one hook or one screw, as its packet says.
    Size footprint;   ///< mm that it covers; a strip is upright.
    std::string source;
    bool breaking = false;  ///< `rated` is the load at which it failed, not one that it may carry.
    std::vector<Core> cores = {};  ///< Walls that it is made for; empty where nothing is said.
    bool in_stud = false;          ///< It holds only in a stud, or in a wall of wood.
    bool closed = false;           ///< Nothing can jump off it.
    std::optional<Nails> nails = {};
    int pack = 1;      ///< How many are sold together.
    double price = 0;  ///< Of a pack, in the person's money; 0 where it is not known.
    UnknownKeys unknown = {};
    bool operator==(const FixingType&) const = default;
};

/// True for what is sold for that part, and for what may be any.
bool suits(const Material& material, MaterialUse use);

/// True for what makes a hole.
constexpr bool pierces(FixingKind kind) {
    return kind == FixingKind::nail_hook || kind == FixingKind::screw;
}

/// A size with a name: "a4", "5x7in". Upright: the width is the shorter side.
struct NamedSize {
    std::string name;
    Size size;
    std::string source;
    UnknownKeys unknown = {};
    bool operator==(const NamedSize&) const = default;
};

struct Catalogue {
    std::vector<Material> materials;
    std::vector<FixingType> fixings;
    std::vector<NamedSize> sizes;
    UnknownKeys unknown = {};
    bool operator==(const Catalogue&) const = default;
};

/// Pointers are for immediate use, null where there is none.
const Material* find(const Catalogue& catalogue, const MaterialId& id);
const FixingType* find(const Catalogue& catalogue, const FixingTypeId& id);

/// `general` with each record of `own` put in place of the one of its name, or added.
Catalogue with_own(Catalogue general, const Catalogue& own);

}  // namespace wallwright::wall
