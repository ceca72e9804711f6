#include "app/triangulate.h"

#include <cmath>
#include <cstddef>

namespace wallwright::app {

namespace {

constexpr double kFlat = 1e-9;  // px2: three corners on one line

double cross(ImVec2 a, ImVec2 b, ImVec2 c) {
    const double ux = double{b.x} - a.x;
    const double uy = double{b.y} - a.y;
    const double vx = double{c.x} - b.x;
    const double vy = double{c.y} - b.y;
    return ux * vy - uy * vx;
}

bool same(ImVec2 a, ImVec2 b) {
    return a.x == b.x && a.y == b.y;
}

/// Cuts corner after corner off a ring of indices.
class EarCutter {
  public:
    EarCutter(std::span<const ImVec2> corners, std::vector<ImDrawIdx>& triangles)
        : corners_(corners), triangles_(triangles) {
        const bool clockwise = twice_area(corners) > 0;
        for (std::size_t i = 0; i < corners.size(); ++i)
            ring_.push_back(static_cast<ImDrawIdx>(clockwise ? i : corners.size() - 1 - i));
    }

    void run() {
        std::size_t at = 0;
        std::size_t refused = 0;
        while (ring_.size() > 2) {
            at %= ring_.size();
            const double turn = turn_at(at);
            // With a full round refused the polygon crosses itself: any corner that turns right
            // will do.
            const bool stuck = refused >= ring_.size();
            if (turn > kFlat && (stuck || is_ear(at))) {
                cut(at);
                refused = 0;
            } else if (std::abs(turn) <= kFlat || (stuck && refused >= 2 * ring_.size())) {
                ring_.erase(ring_.begin() + static_cast<std::ptrdiff_t>(at));
                refused = 0;
            } else {
                ++at;
                ++refused;
            }
        }
    }

  private:
    [[nodiscard]] ImVec2 corner(std::size_t at) const { return corners_[ring_[at % ring_.size()]]; }
    [[nodiscard]] std::size_t before(std::size_t at) const { return at + ring_.size() - 1; }
    [[nodiscard]] double turn_at(std::size_t at) const {
        return cross(corner(before(at)), corner(at), corner(at + 1));
    }

    /// No other corner lies in the triangle.
    [[nodiscard]] bool is_ear(std::size_t at) const {
        const ImVec2 a = corner(before(at));
        const ImVec2 b = corner(at);
        const ImVec2 c = corner(at + 1);
        for (std::size_t i = 2; i + 1 < ring_.size(); ++i) {
            const ImVec2 p = corner(at + i);
            if (!same(p, a) && !same(p, b) && !same(p, c) && cross(a, b, p) >= 0 &&
                cross(b, c, p) >= 0 && cross(c, a, p) >= 0)
                return false;
        }
        return true;
    }

    void cut(std::size_t at) {
        triangles_.push_back(ring_[before(at) % ring_.size()]);
        triangles_.push_back(ring_[at]);
        triangles_.push_back(ring_[(at + 1) % ring_.size()]);
        ring_.erase(ring_.begin() + static_cast<std::ptrdiff_t>(at));
    }

    std::span<const ImVec2> corners_;
    std::vector<ImDrawIdx>& triangles_;
    std::vector<ImDrawIdx> ring_;
};

}  // namespace

double twice_area(std::span<const ImVec2> corners) {
    double sum = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const ImVec2 a = corners[i];
        const ImVec2 b = corners[(i + 1) % corners.size()];
        sum += double{a.x} * b.y - double{b.x} * a.y;
    }
    return sum;
}

void triangulate(std::span<const ImVec2> corners, std::vector<ImDrawIdx>& triangles) {
    triangles.clear();
    if (corners.size() < 3)
        return;
    EarCutter(corners, triangles).run();
}

}  // namespace wallwright::app
