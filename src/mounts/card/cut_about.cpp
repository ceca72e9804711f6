#include "mounts/card/cut_about.h"

#include <algorithm>
#include <array>
#include <map>

namespace wallwright::mounts {

namespace {

using geometry::kLengthEps;

/// Edges along one axis, in order, none twice.
using Edges = std::vector<double>;

/// Bounds of a rectangle as indices of edges: left, right, top, bottom.
using Part = std::array<std::size_t, 4>;

/// The best way to cut one part.
struct Way {
    bool possible = false;
    bool cuts = false;
    bool upright = false;
    std::size_t at = 0;  // index of the edge
    double squares = 0;  // mm4 of what is left
};

void add_edges(Edges& edges, double from, double length) {
    edges.push_back(from);
    edges.push_back(from + length);
}

void put_in_order(Edges& edges) {
    std::sort(edges.begin(), edges.end());
    const auto end = std::unique(edges.begin(), edges.end(),
                                 [](double a, double b) { return b - a < kLengthEps; });
    edges.erase(end, edges.end());
}

std::size_t index_of(const Edges& edges, double at) {
    const auto found = std::lower_bound(edges.begin(), edges.end(), at - kLengthEps);
    return static_cast<std::size_t>(found - edges.begin());
}

class About {
  public:
    About(const OnSheet& whole, std::span<const OnSheet> kept) {
        add(whole);
        for (const OnSheet& one : kept)
            add(one);
        put_in_order(across_);
        put_in_order(down_);
        for (const OnSheet& one : kept)
            kept_.push_back(part_of(one));
        whole_ = part_of(whole);
    }

    std::optional<CutAbout> cut() {
        if (!best(whole_).possible)
            return std::nullopt;
        CutAbout result;
        write(whole_, result);
        return result;
    }

  private:
    void add(const OnSheet& place) {
        add_edges(across_, place.left, place.size.width);
        add_edges(down_, place.top, place.size.height);
    }

    [[nodiscard]] Part part_of(const OnSheet& place) const {
        return {index_of(across_, place.left), index_of(across_, place.left + place.size.width),
                index_of(down_, place.top), index_of(down_, place.top + place.size.height)};
    }

    [[nodiscard]] OnSheet place_of(const Part& part) const {
        return {across_[part[0]],
                down_[part[2]],
                {across_[part[1]] - across_[part[0]], down_[part[3]] - down_[part[2]]}};
    }

    [[nodiscard]] std::vector<Part> kept_in(const Part& part) const {
        std::vector<Part> inside;
        for (const Part& one : kept_)
            if (one[0] >= part[0] && one[1] <= part[1] && one[2] >= part[2] && one[3] <= part[3])
                inside.push_back(one);
        return inside;
    }

    static std::array<Part, 2> halves(const Part& part, bool upright, std::size_t at) {
        std::array<Part, 2> both{part, part};
        both[0][upright ? 1 : 3] = at;
        both[1][upright ? 0 : 2] = at;
        return both;
    }

    const Way& best(const Part& part) {
        if (const auto known = ways_.find(part); known != ways_.end())
            return known->second;
        const std::vector<Part> inside = kept_in(part);
        Way way;
        if (inside.empty()) {
            const double area = place_of(part).size.area();
            way = {.possible = true, .squares = area * area};
        } else if (inside.size() == 1 && inside[0] == part) {
            way.possible = true;
        } else {
            for (const bool upright : {true, false})
                try_cuts(part, inside, upright, way);
        }
        return ways_[part] = way;
    }

    // At the edges of what is inside; any other would only part what is left.
    void try_cuts(const Part& part, const std::vector<Part>& inside, bool upright, Way& way) {
        const std::size_t low = upright ? 0 : 2;
        for (const Part& edge_of : inside)
            for (const std::size_t at : {edge_of[low], edge_of[low + 1]}) {
                const bool free =
                    at > part[low] && at < part[low + 1] &&
                    std::none_of(inside.begin(), inside.end(), [at, low](const Part& one) {
                        return at > one[low] && at < one[low + 1];
                    });
                if (free)
                    try_cut(part, upright, at, way);
            }
    }

    void try_cut(const Part& part, bool upright, std::size_t at, Way& way) {
        const auto [one, other] = halves(part, upright, at);
        const Way first = best(one);
        const Way second = first.possible ? best(other) : Way{};
        const double squares = first.squares + second.squares;
        if (second.possible && (!way.possible || squares > way.squares))
            way = {true, true, upright, at, squares};
    }

    // The largest piece is in hand as long as can be: every part is cut across before it is cut up.
    void write(const Part& part, CutAbout& result) {
        const Way way = best(part);
        if (way.cuts) {
            result.cuts.push_back({.piece = place_of(part),
                                   .upright = way.upright,
                                   .at = (way.upright ? across_ : down_)[way.at]});
            for (const Part& half : halves(part, way.upright, way.at))
                write(half, result);
        } else if (kept_in(part).empty()) {
            result.free.push_back(place_of(part));
        }
    }

    Edges across_;
    Edges down_;
    std::vector<Part> kept_;
    Part whole_{};
    std::map<Part, Way> ways_;
};

}  // namespace

std::optional<CutAbout> cut_about(const OnSheet& whole, std::span<const OnSheet> kept) {
    return About(whole, kept).cut();
}

bool overlap(const OnSheet& one, const OnSheet& other) {
    return one.left + one.size.width > other.left + kLengthEps &&
           other.left + other.size.width > one.left + kLengthEps &&
           one.top + one.size.height > other.top + kLengthEps &&
           other.top + other.size.height > one.top + kLengthEps;
}

bool lies_in(const OnSheet& inner, const OnSheet& outer) {
    return inner.left > outer.left - kLengthEps && inner.top > outer.top - kLengthEps &&
           inner.left + inner.size.width < outer.left + outer.size.width + kLengthEps &&
           inner.top + inner.size.height < outer.top + outer.size.height + kLengthEps;
}

}  // namespace wallwright::mounts
