#include "app/fills.h"

#include "app/theme.h"
#include "app/triangulate.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wallwright::app {

namespace {

/// As the pages' painter has it: five layers of this, each reaching less far.
constexpr double kShadowLayer = 0.045;
constexpr int kShadowLayers = 5;

/// From the line before->at to the line at->after, for an edge that is half a pixel further out.
ImVec2 outward(ImVec2 before, ImVec2 at, ImVec2 after) {
    const auto normal = [](ImVec2 from, ImVec2 to) {
        const float length = std::max(1e-6F, std::hypot(to.x - from.x, to.y - from.y));
        return ImVec2{(to.y - from.y) / length, -(to.x - from.x) / length};
    };
    const ImVec2 one = normal(before, at);
    const ImVec2 other = normal(at, after);
    const ImVec2 middle{(one.x + other.x) / 2, (one.y + other.y) / 2};
    const float squared = middle.x * middle.x + middle.y * middle.y;
    const float longer = 0.5F / std::max(0.1F, squared);  // no spikes at sharp corners
    return {middle.x * longer, middle.y * longer};
}

bool is_box(std::span<const ImVec2> corners) {
    return corners.size() == 4 && is_upright(corners, true);
}

}  // namespace

void FillPen::box(const ImVec4& box, ImU32 colour) {
    list_.AddRectFilled({std::max(box.x, clip_.x), std::max(box.y, clip_.y)},
                        {std::min(box.z, clip_.z), std::min(box.w, clip_.w)}, colour);
}

void FillPen::fill(std::span<const ImVec2> corners, ImU32 colour) {
    if (corners.size() < 3)
        return;
    const ImVec4 bounds = bounds_of(corners);
    if (is_apart(bounds, clip_))
        return;
    if (is_box(corners)) {
        box(bounds, colour);
        return;
    }
    corners_.assign(corners.begin(), corners.end());
    if (!is_inside(bounds, clip_))
        clip_polygon(corners_, clip_, spare_);
    if (twice_area(corners_) < 0)
        std::reverse(corners_.begin(), corners_.end());
    if (is_convex(corners_))
        list_.AddConvexPolyFilled(corners_.data(), static_cast<int>(corners_.size()), colour);
    else
        concave(colour);
}

void FillPen::concave(ImU32 colour) {
    triangulate(corners_, triangles_);
    const std::size_t count = corners_.size();
    list_.PrimReserve(static_cast<int>(triangles_.size() + 6 * count), static_cast<int>(2 * count));
    const ImVec2 white = ImGui::GetFontTexUvWhitePixel();
    const auto first = static_cast<ImDrawIdx>(list_._VtxCurrentIdx);
    for (std::size_t i = 0; i < count; ++i) {
        const ImVec2 at = corners_[i];
        const ImVec2 out =
            outward(corners_[(i + count - 1) % count], at, corners_[(i + 1) % count]);
        list_.PrimWriteVtx({at.x - out.x, at.y - out.y}, white, colour);
        list_.PrimWriteVtx({at.x + out.x, at.y + out.y}, white, with_alpha(colour, 0));
    }
    const auto inner = [first](std::size_t i) { return static_cast<ImDrawIdx>(first + 2 * i); };
    const auto outer = [first](std::size_t i) { return static_cast<ImDrawIdx>(first + 2 * i + 1); };
    for (const ImDrawIdx corner : triangles_)
        list_.PrimWriteIdx(inner(corner));
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t next = (i + 1) % count;
        for (const ImDrawIdx corner :
             {inner(i), outer(i), outer(next), inner(i), outer(next), inner(next)})
            list_.PrimWriteIdx(corner);
    }
}

void FillPen::shadow(const ImVec4& of, float depth, ImU32 colour) {
    const float inset = 0.06F * depth;  // where all layers lie; where none does is a reach further
    const float reach = 0.6F * depth;
    const ImVec2 by{0.25F * depth, 0.35F * depth};
    const ImVec4 core = grown({of.x + by.x, of.y + by.y, of.z + by.x, of.w + by.y}, inset);
    if (!is_apart(grown(core, reach), clip_))
        soft_box(core, reach, with_alpha(colour, 1 - std::pow(1 - kShadowLayer, kShadowLayers)));
}

void FillPen::soft_box(const ImVec4& core, float reach, ImU32 colour) {
    constexpr int kSteps = 4;  // of a quarter round
    constexpr int kRound = 4 * (kSteps + 1);
    const ImVec2 white = ImGui::GetFontTexUvWhitePixel();
    const ImVec2 centres[] = {
        {core.z, core.w}, {core.x, core.w}, {core.x, core.y}, {core.z, core.y}};
    list_.PrimReserve(6 + 6 * kRound, 2 * kRound);
    const auto first = static_cast<ImDrawIdx>(list_._VtxCurrentIdx);
    for (int i = 0; i < kRound; ++i) {
        const int quarter = i / (kSteps + 1);
        const double angle =
            std::numbers::pi / 2 * (quarter + static_cast<double>(i % (kSteps + 1)) / kSteps);
        const ImVec2 centre = centres[quarter];
        const ImVec2 rim{centre.x + reach * static_cast<float>(std::cos(angle)),
                         centre.y + reach * static_cast<float>(std::sin(angle))};
        list_.PrimWriteVtx(centre, white, colour);
        list_.PrimWriteVtx(rim, white, with_alpha(colour, 0));
    }
    const auto at = [first](int i) { return static_cast<ImDrawIdx>(first + i % (2 * kRound)); };
    for (int i = 0; i < 2 * kRound; i += 2)
        for (const int corner : {i, i + 1, i + 3, i, i + 3, i + 2})
            list_.PrimWriteIdx(at(corner));
    constexpr int kQuarter = 2 * (kSteps + 1);
    for (const int corner : {0, kQuarter, 2 * kQuarter, 0, 2 * kQuarter, 3 * kQuarter})
        list_.PrimWriteIdx(at(corner));
}

}  // namespace wallwright::app
