#include "edits/sound.h"

#include "wall/validity.h"

#include <cmath>

namespace wallwright::edits {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;

constexpr double kStepsPerUnit = 1000;  // of what is not in mm

double to_thousandth(double value) {
    return std::round(value * kStepsPerUnit) / kStepsPerUnit;
}

Point<Wall> to_file_step(Point<Wall> point) {
    return {edits::to_file_step(point.x), edits::to_file_step(point.y)};
}

/// A file keeps the lower left corner and the size.
Rect<Wall> to_file_step(const Rect<Wall>& rect) {
    return Rect<Wall>::at(to_file_step(rect.min),
                          {edits::to_file_step(rect.width()), edits::to_file_step(rect.height())});
}

void keep_file_steps(wall::Target& target) {
    if (auto* point = std::get_if<Point<Wall>>(&target))
        *point = to_file_step(*point);
    if (auto* region = std::get_if<Rect<Wall>>(&target))
        *region = to_file_step(*region);
}

wall::FromCorner to_file_step(wall::FromCorner at) {
    return {edits::to_file_step(at.left), edits::to_file_step(at.top)};
}

void keep_file_steps(wall::Mount& mount) {
    if (mount.base_ratio)
        mount.base_ratio = to_thousandth(*mount.base_ratio);
    if (mount.by_hand)
        mount.by_hand = to_file_step(*mount.by_hand);
    for (wall::Opening& opening : mount.openings)
        if (opening.at)
            opening.at = to_file_step(*opening.at);
}

void keep_file_steps(wall::CardSheet& sheet) {
    sheet.size = {edits::to_file_step(sheet.size.width), edits::to_file_step(sheet.size.height)};
    sheet.margin = edits::to_file_step(sheet.margin);
    sheet.price = to_thousandth(sheet.price);
}

void keep_file_steps(wall::Project& project) {
    for (Point<Wall>& corner : project.room.outline.corners)
        corner = to_file_step(corner);
    for (wall::Furniture& one : project.room.furniture)
        one.place = to_file_step(one.place);
    for (wall::Fixture& one : project.room.fixtures)
        one.place = to_file_step(one.place);
    for (wall::Piece& piece : project.pieces)
        if (piece.at)
            piece.at = to_file_step(*piece.at);
    if (project.target)
        keep_file_steps(*project.target);
    for (wall::MeasureWeight& one : project.weights)
        one.weight = to_thousandth(one.weight);
    for (wall::Mount& mount : project.mounts)
        keep_file_steps(mount);
    for (wall::CardSheet& sheet : project.card)
        keep_file_steps(sheet);
    for (wall::KeptBlank& kept : project.kept_blanks) {
        kept.left = edits::to_file_step(kept.left);
        kept.top = edits::to_file_step(kept.top);
    }
    if (project.mount_cut_price)
        project.mount_cut_price = to_thousandth(*project.mount_cut_price);
}

}  // namespace

double to_file_step(double mm) {
    constexpr double kStepsPerMm = 100;
    return std::round(mm * kStepsPerMm) / kStepsPerMm;
}

Result<wall::Project> sound(wall::Project project) {
    keep_file_steps(project);
    if (auto all = wall::faults(project); !all.empty())
        return fail(std::move(all.front()));
    return project;
}

}  // namespace wallwright::edits
