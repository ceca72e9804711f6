#include "desk/centred.h"

#include "desk/command_functions.h"
#include "edits/sound.h"

namespace wallwright::desk {

Result<wall::Project> centred(wall::Project project, edits::PieceIds group) {
    const double up = project.style.centre_height - bounds_of(project, group).centre().y;
    return edits::shift(std::move(project), group, {0, edits::to_file_step(up)});
}

}  // namespace wallwright::desk
