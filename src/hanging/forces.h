// The forces on a piece as it hangs, in balance: elementary statics, friction left out.
#pragma once

#include "hanging/fixings.h"

#include <string>
#include <vector>

namespace wallwright::hanging {

/// x to the right, y up, z out of the wall into the room. Places in mm from the lower left corner
/// of the frame's back, forces in N.
struct Spatial {
    double x = 0;
    double y = 0;
    double z = 0;
};

enum class ForceKind {
    weight,    ///< At the centre of gravity, half the frame's depth from the wall.
    carried,   ///< Along the wall, by a hook, a screw, a pair of strips or a rail hook's cord.
    held,      ///< Toward the wall, at the same places: what would else lean off it.
    wall_push  ///< The wall against the frame's lower edge.
};

struct Force {
    ForceKind kind = ForceKind::weight;
    std::string what;  ///< "weight", "left hook", "pair at the top left", "wall at the lower edge".
    Spatial at;
    Spatial newtons;
};

/// A formula in signs, with the numbers put in: "T = W / (2 sin a) = 19.6 N / (2 x sin 28.1 deg) =
/// 20.8 N", and what it is about.
struct Worked {
    std::string about;
    std::string formula;
};

/// A straight run of cord, from where it is tied to the frame up to its hook.
struct Strand {
    Spatial from;
    Spatial to;
};

struct FreeBody {
    geometry::Size outside;  ///< mm
    double depth = 0;        ///< mm
    std::vector<Force> forces;
    std::vector<Worked> worked;
    /// What is left out (friction), and what a lower pair or a bumper changes.
    std::vector<std::string> remarks;
    std::vector<Strand> cord = {};  ///< For the drawing; of a rail hook up to the rail.
};

/// All forces on the piece with its cord by its high weight; they and their moments about any point
/// add up to nothing. `hanging` is the piece's and has fixings; numbers in the words are in the
/// person's unit of force.
FreeBody free_body(const wall::Project& project, const Hanging& hanging);

}  // namespace wallwright::hanging
