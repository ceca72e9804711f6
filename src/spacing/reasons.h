// Why a gap or an alignment could not be made, in plain words.
#pragma once

#include "spacing/even.h"
#include "spacing/layout.h"

#include <span>
#include <string>
#include <vector>

namespace wallwright::spacing {

/// Names for the bodies of a layout: the pieces first, then the obstacles.
class Reasons {
  public:
    Reasons(std::span<const wall::Placed> pieces, std::span<const Obstacle> obstacles);

    /// What stands in the way of closing the ring, each said once: of a pair with a body that does
    /// not move that body, else what the pair is held to. The pairs in `asked` are the question, so
    /// only a body of them that does not move is part of the answer.
    [[nodiscard]] std::vector<std::string> of_ring(Axis axis, std::span<const RingPart> ring,
                                                   std::span<const Pair> asked) const;
    /// Which of the two do not move.
    [[nodiscard]] std::vector<std::string> of_held(Pair pair) const;
    /// Two bodies would get in each other's way.
    [[nodiscard]] std::string of_clash(Pair pair) const;
    /// "top edges of kelp and dune line up".
    [[nodiscard]] std::string lined_up(Axis axis, Line line, Pair pair) const;

  private:
    struct Named {
        std::string name;
        bool held = false;
        bool obstacle = false;
    };
    [[nodiscard]] static std::string stays(const Named& body);
    [[nodiscard]] std::string of_cause(Axis axis, const Cause& cause) const;
    [[nodiscard]] std::string both(Pair pair) const;

    std::vector<Named> bodies_;
};

/// "top edges", "centre lines", "left edges": what lines up across a gap along the other axis.
std::string name_of_line(Axis axis, Line line);

}  // namespace wallwright::spacing
