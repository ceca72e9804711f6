#include "pages/mount_job.h"

#include "mounts/card/still_to_cut.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::pages {

namespace {

constexpr double kSameCut = 0.005;  // mm

bool is_same(double a, double b) {
    return std::abs(a - b) < kSameCut;
}

template <class Space>
bool is_same(const geometry::Rect<Space>& a, const geometry::Rect<Space>& b) {
    return is_same(a.min.x, b.min.x) && is_same(a.min.y, b.min.y) && is_same(a.max.x, b.max.x) &&
           is_same(a.max.y, b.max.y);
}

bool is_same(const mounts::CutLayer& a, const mounts::CutLayer& b) {
    return a.card == b.card && a.colour == b.colour &&
           std::equal(a.windows.begin(), a.windows.end(), b.windows.begin(), b.windows.end(),
                      [](const mounts::Window& one, const mounts::Window& other) {
                          return is_same(one.face, other.face) && is_same(one.back, other.back);
                      });
}

/// Whether who has cut one has cut the other, and hinges the print at the same place.
bool is_same(const mounts::MountDesign& a, const mounts::MountDesign& b) {
    return is_same(a.blank.width, b.blank.width) && is_same(a.blank.height, b.blank.height) &&
           is_same(a.lip.left, b.lip.left) && is_same(a.lip.top, b.lip.top) && a.edge == b.edge &&
           a.floats == b.floats &&
           std::equal(a.layers.begin(), a.layers.end(), b.layers.begin(), b.layers.end(),
                      [](const auto& one, const auto& other) { return is_same(one, other); }) &&
           std::equal(a.prints.begin(), a.prints.end(), b.prints.begin(), b.prints.end(),
                      [](const mounts::LaidPrint& one, const mounts::LaidPrint& other) {
                          return is_same(one.place, other.place);
                      });
}

std::vector<std::string> all_titles(const MountJob& job) {
    std::vector<std::string> titles;
    for (const wall::Piece* piece : job.pieces)
        titles.push_back(wall::title_of(*piece));
    return titles;
}

void call_prints_by_number(mounts::MountDesign& design) {
    for (std::size_t i = 0; i < design.prints.size(); ++i)
        design.prints[i].title =
            design.prints.size() == 1 ? "the print" : fmt::format("print {}", i + 1);
}

}  // namespace

std::vector<MountJob> mount_jobs(const wall::Project& project) {
    std::vector<MountJob> jobs;
    for (const wall::Piece& piece : project.pieces) {
        const auto design =
            mounts::is_still_to_cut(piece) ? mounts::design_of(project, piece) : std::nullopt;
        if (!design)
            continue;
        const auto same = std::find_if(jobs.begin(), jobs.end(), [&design](const MountJob& job) {
            return is_same(job.design, *design);
        });
        if (same != jobs.end())
            same->pieces.push_back(&piece);
        else
            jobs.push_back({{&piece}, wall::find(project, *piece.mount), *design});
    }
    for (MountJob& job : jobs)
        if (job.pieces.size() > 1)
            call_prints_by_number(job.design);
    return jobs;
}

std::string titles_of(const MountJob& job) {
    return wall::listed(all_titles(job));
}

std::string short_titles_of(const MountJob& job) {
    constexpr std::size_t kMost = 3;
    return wall::listed(all_titles(job), kMost);
}

std::string board_name(const MountJob& job, std::size_t layer) {
    const std::size_t count = job.design.layers.size();
    return count == 1 ? "the blank" : fmt::format("layer {} of {}", layer + 1, count);
}

}  // namespace wallwright::pages
