#include "edits/edit.h"

#include "wall/validity.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::edits {

namespace {

using wall::Piece;
using wall::PieceState;
using wall::Project;

Result<Project> sound(Project project) {
    if (auto all = wall::faults(project); !all.empty())
        return fail(std::move(all.front()));
    return project;
}

Piece* find_piece(Project& project, const wall::PieceId& id) {
    const auto found = std::find_if(project.pieces.begin(), project.pieces.end(),
                                    [&id](const Piece& one) { return one.id == id; });
    return found == project.pieces.end() ? nullptr : &*found;
}

Outcome move_piece(Project& project, const Move& move) {
    Piece* piece = find_piece(project, move.piece);
    if (piece == nullptr)
        return fail({"pieces/" + move.piece.text, "there is no such piece",
                     "name one that is in the project", ""});
    if (is_fixed(*piece) && piece->at != move.to)
        return fail({"pieces/" + move.piece.text,
                     piece->pinned ? "it is pinned" : "it hangs already",
                     piece->pinned ? "unpin it to move it" : "call it planned to move it", ""});
    piece->at = move.to;
    if (piece->state == PieceState::waiting)
        piece->state = PieceState::planned;
    return {};
}

/// `wanted`, or with the first number from 2 that `taken` does not know.
template <class Taken>
std::string free_id(const std::string& wanted, Taken taken) {
    std::string id = wanted;
    for (int number = 2; taken(id); ++number)
        id = fmt::format("{}-{}", wanted, number);
    return id;
}

template <class T>
bool has_id(const std::vector<T>& all, const std::string& id) {
    return std::any_of(all.begin(), all.end(), [&id](const T& one) { return one.id.text == id; });
}

bool stays_in_id(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || byte >= 0x80;
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
