#include "rules/scene.h"

#include "base/contract.h"
#include "rules/judge.h"

#include <algorithm>

namespace wallwright::rules {

std::vector<OnWall> pieces_on_wall(const wall::Project& project,
                                   std::span<const hanging::Hanging> hangings) {
    std::vector<OnWall> pieces;
    for (const wall::Piece& piece : project.pieces) {
        const auto place = wall::place_of(project, piece);
        if (!place)
            continue;
        WW_EXPECT(pieces.size() < hangings.size(), "every piece on the wall is hung somehow");
        const hanging::Hanging& hanging = hangings[pieces.size()];
        WW_EXPECT(hanging.piece == piece.id, "hangings are in the project's order");
        pieces.push_back({&piece, &frame_of(project, piece), &hanging, *place});
    }
    return pieces;
}

std::vector<const OnWall*> members_of(const Scene& scene, const spacing::Group& group) {
    std::vector<const OnWall*> members;
    auto wanted = group.pieces.begin();
    for (const OnWall& one : scene.pieces) {
        if (wanted == group.pieces.end())
            break;
        if (one.piece->id != *wanted)
            continue;
        members.push_back(&one);
        ++wanted;
    }
    WW_EXPECT(members.size() == group.pieces.size(),
              "a group holds pieces on the wall, in the project's order");
    return members;
}

const OnWall& on_wall(const Scene& scene, const wall::PieceId& id) {
    const auto found = std::ranges::find(
        scene.pieces, id, [](const OnWall& one) -> const wall::PieceId& { return one.piece->id; });
    WW_EXPECT(found != scene.pieces.end(), "rules ask only for pieces that are on the wall");
    return *found;
}

bool on_strips(const OnWall& one) {
    if (one.hanging->fixings.empty())
        return one.piece->hanger.type == wall::HangerType::strips;
    return one.hanging->fixings.front().kind == wall::FixingKind::strip_pair;
}

std::vector<const OnWall*> those_on_strips(const Scene& scene) {
    std::vector<const OnWall*> found;
    for (const OnWall& one : scene.pieces)
        if (on_strips(one))
            found.push_back(&one);
    return found;
}

bool is_over(const OnWall& one, const geometry::Rect<geometry::Wall>& thing) {
    return exceeds(geometry::overlap_x(one.place, thing), 0) &&
           exceeds(one.place.top(), thing.top());
}

}  // namespace wallwright::rules
