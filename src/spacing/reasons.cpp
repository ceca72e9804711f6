#include "spacing/reasons.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::spacing {

namespace {

void say_once(std::vector<std::string>& said, std::string reason) {
    if (std::ranges::find(said, reason) == said.end()) {
        said.push_back(std::move(reason));
    }
}

}  // namespace

Reasons::Reasons(std::span<const wall::Placed> pieces, std::span<const Obstacle> obstacles) {
    for (const wall::Placed& piece : pieces) {
        bodies_.push_back({piece.title.empty() ? piece.id.text : piece.title, piece.fixed, false});
    }
    for (const Obstacle& obstacle : obstacles) {
        bodies_.push_back({obstacle.name, true, true});
    }
}

std::vector<std::string> Reasons::of_ring(Axis axis, std::span<const RingPart> ring,
                                          std::span<const Pair> asked) const {
    std::vector<std::string> reasons;
    for (const RingPart& part : ring) {
        const std::vector<std::string> held = of_held(part.cause.pair);
        const bool is_answer = held.empty() || part.cause.kind == Cause::Kind::lined_up;
        if (is_answer && std::ranges::find(asked, part.cause.pair) == asked.end()) {
            say_once(reasons, of_cause(axis, part.cause));
        }
        for (const std::string& reason : held) {
            say_once(reasons, reason);
        }
    }
    return reasons;
}

std::vector<std::string> Reasons::of_held(Pair pair) const {
    std::vector<std::string> reasons;
    for (const std::uint32_t end : {pair.first, pair.second}) {
        if (bodies_[end].held) {
            reasons.push_back(stays(bodies_[end]));
        }
    }
    return reasons;
}

std::string Reasons::of_clash(Pair pair) const {
    return fmt::format("{} would come too near", both(pair));
}

std::string Reasons::lined_up(Axis axis, Line line, Pair pair) const {
    return fmt::format("{} of {} line up", name_of_line(axis, line), both(pair));
}

std::string Reasons::stays(const Named& body) {
    return body.obstacle ? body.name : body.name + " stays where it is";
}

std::string Reasons::of_cause(Axis axis, const Cause& cause) const {
    switch (cause.kind) {
        case Cause::Kind::kept_apart:
        case Cause::Kind::even_gap:
            return "the gap between " + both(cause.pair);
        case Cause::Kind::other_group:
            return both(cause.pair) + " belong to different groups";
        case Cause::Kind::lined_up:
            return lined_up(axis, cause.line, cause.pair);
    }
    return {};
}

std::string Reasons::both(Pair pair) const {
    return fmt::format("{} and {}", bodies_[pair.first].name, bodies_[pair.second].name);
}

std::string name_of_line(Axis axis, Line line) {
    if (line == Line::centre) {
        return "centre lines";
    }
    if (axis == Axis::horizontal) {
        return line == Line::low ? "left edges" : "right edges";
    }
    return line == Line::low ? "bottom edges" : "top edges";
}

}  // namespace wallwright::spacing
