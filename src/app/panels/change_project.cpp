#include "app/panels/change_project.h"

#include "edits/room.h"

namespace wallwright::app {

void change_project(desk::Session& session, const char* step,
                    const std::function<void(wall::Project&)>& by_hand) {
    session.apply(step, edits::change_project(session.kept(), by_hand));
}

}  // namespace wallwright::app
