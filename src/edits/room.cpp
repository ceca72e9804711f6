#include "edits/room.h"

#include "edits/by_hand.h"
#include "edits/edit.h"
#include "edits/free_id.h"
#include "edits/look_up.h"
#include "edits/sound.h"
#include "edits/wishes.h"

#include <fmt/format.h>

namespace wallwright::edits {

using wall::Fixture;
using wall::FixtureId;
using wall::Furniture;
using wall::FurnitureId;
using wall::Project;

namespace {

Problem no_such_thing(std::string_view kind, const std::string& id) {
    return {fmt::format("room/{}/{}", kind, id), "there is no such thing",
            "name one that is in the room", ""};
}

}  // namespace

Result<Project> change_project(Project project, const std::function<void(Project&)>& change) {
    change(project);
    return sound(std::move(project));
}

Result<Project> change_furniture(Project project, const FurnitureId& id,
                                 const std::function<void(Furniture&)>& change) {
    Furniture* found = wall::find_in(project.room.furniture, id);
    if (found == nullptr)
        return fail(no_such_thing("furniture", id.text));
    change_by_hand(*found, change);
    return sound(std::move(project));
}

Result<Project> change_fixture(Project project, const FixtureId& id,
                               const std::function<void(Fixture&)>& change) {
    Fixture* found = wall::find_in(project.room.fixtures, id);
    if (found == nullptr)
        return fail(no_such_thing("fixtures", id.text));
    change_by_hand(*found, change);
    return sound(std::move(project));
}

Result<Project> add_furniture(Project project, Furniture furniture, FurnitureId& made) {
    auto added = add_furniture(std::move(project), std::move(furniture));
    if (added)
        made = added->room.furniture.back().id;
    return added;
}

Result<Project> add_fixture(Project project, Fixture fixture, FixtureId& made) {
    const std::string type(wall::name_of(fixture.type));
    const FixtureId id = add_with_id(project.room.fixtures, std::move(fixture), type).id;
    auto added = sound(std::move(project));
    if (added)
        made = id;
    return added;
}

Result<Project> remove(Project project, const FurnitureId& id) {
    const auto is_it = [&id](const Furniture& one) { return one.id == id; };
    if (std::erase_if(project.room.furniture, is_it) == 0)
        return fail(no_such_thing("furniture", id.text));
    drop_wishes_about(project, id);
    return sound(std::move(project));
}

Result<Project> remove(Project project, const FixtureId& id) {
    const auto is_it = [&id](const Fixture& one) { return one.id == id; };
    if (std::erase_if(project.room.fixtures, is_it) == 0)
        return fail(no_such_thing("fixtures", id.text));
    drop_wishes_about(project, id);
    return sound(std::move(project));
}

}  // namespace wallwright::edits
