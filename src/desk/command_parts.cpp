#include "base/contract.h"
#include "desk/command_functions.h"

#include <algorithm>

namespace wallwright::desk {

std::vector<wall::PieceId> selected_on_wall(const Session& session) {
    std::vector<wall::PieceId> ids = session.selection.pieces();
    std::erase_if(
        ids, [&session](const wall::PieceId& id) { return !place_of(session.kept(), Thing(id)); });
    return ids;
}

const wall::Piece* first_fixed(const wall::Project& project, edits::PieceIds ids) {
    for (const wall::PieceId& id : ids)
        if (const wall::Piece* piece = wall::find(project, id);
            piece != nullptr && wall::is_fixed(*piece))
            return piece;
    return nullptr;
}

geometry::Rect<geometry::Wall> bounds_of(const wall::Project& project, edits::PieceIds ids) {
    std::optional<geometry::Rect<geometry::Wall>> bounds;
    for (const wall::PieceId& id : ids)
        if (const auto place = place_of(project, Thing(id)))
            bounds = bounds ? geometry::hull(*bounds, *place) : *place;
    WW_EXPECT(bounds.has_value(), "bounds are asked of pieces on the wall");
    return *bounds;
}

}  // namespace wallwright::desk
