#include "edits/edit.h"

#include "edits/free_id.h"
#include "edits/look_up.h"
#include "edits/sound.h"

#include <algorithm>

namespace wallwright::edits {

namespace {

using wall::Piece;
using wall::PieceState;
using wall::Project;

Outcome move_piece(Project& project, const Move& move) {
    const auto found = piece_in(project, move.piece);
    if (!found)
        return fail(found.error());
    Piece* piece = *found;
    if (piece->at != move.to)
        if (auto may = may_move(*piece); !may)
            return may;
    piece->at = move.to;
    if (piece->state == PieceState::waiting)
        piece->state = PieceState::planned;
    return {};
}

bool stays_in_id(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || byte >= 0x80;
}

wall::Frame frame_from(const wall::FrameRow& row) {
    wall::Frame frame = usual_frame(row.outside);
    frame.title = row.title;
    frame.depth = row.depth.value_or(frame.depth);
    return frame;
}

Piece piece_from(const wall::FrameRow& row) {
    Piece piece;
    piece.title = row.title;
    piece.state = row.state;
    piece.at = row.at;
    piece.weighed = row.weighed;
    piece.hanger.type = row.hanger;
    return piece;
}

}  // namespace

Result<Project> start(wall::Size wall_size, units::LengthUnit unit) {
    Project project;
    project.unit = unit;
    project.room.outline.corners = {
        {0, 0}, {wall_size.width, 0}, {wall_size.width, wall_size.height}, {0, wall_size.height}};
    return sound(std::move(project));
}

Result<Project> place(Project project, std::span<const Move> moves) {
    for (const Move& move : moves)
        if (auto moved = move_piece(project, move); !moved)
            return fail(std::move(moved.error()));
    return sound(std::move(project));
}

Result<Project> set_gap(Project project, double gap) {
    project.style.gap = gap;
    project.style.gap_least = std::min(project.style.gap_least, gap);
    project.style.gap_most = std::max(project.style.gap_most, gap);
    return sound(std::move(project));
}

wall::Frame usual_frame(wall::Size outside) {
    constexpr double kWidestShare = 1.0 / 6;
    wall::Frame frame;
    frame.outside = outside;
    frame.moulding_width =
        std::min(frame.moulding_width, kWidestShare * std::min(outside.width, outside.height));
    frame.rebate_width = std::min(frame.rebate_width, frame.moulding_width);
    return frame;
}

Result<Project> add_piece(Project project, wall::Frame frame, Piece piece) {
    const std::string id = free_id(id_from(piece.title), [&project](const std::string& candidate) {
        return has_id(project.pieces, candidate) || has_id(project.frames, candidate);
    });
    frame.id = {id};
    piece.id = {id};
    piece.frame = {id};
    project.frames.push_back(std::move(frame));
    project.pieces.push_back(std::move(piece));
    return sound(std::move(project));
}

Result<Project> add_frames(Project project, std::span<const wall::FrameRow> rows) {
    for (const wall::FrameRow& row : rows) {
        auto added = add_piece(std::move(project), frame_from(row), piece_from(row));
        if (!added)
            return added;
        project = std::move(*added);
    }
    return project;
}

Result<Project> add_furniture(Project project, wall::Furniture furniture) {
    furniture.id = {free_id(std::string(wall::name_of(furniture.type)),
                            [&project](const std::string& candidate) {
                                return has_id(project.room.furniture, candidate);
                            })};
    project.room.furniture.push_back(std::move(furniture));
    return sound(std::move(project));
}

std::string id_from(std::string_view title) {
    std::string id;
    for (const char c : title) {
        const char lower = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        if (stays_in_id(lower))
            id += lower;
        else if (!id.empty() && id.back() != '-')
            id += '-';
    }
    while (id.ends_with('-'))
        id.pop_back();
    return id.empty() ? "piece" : id;
}

}  // namespace wallwright::edits
