#include "arrange/arrange.h"
#include "arrange/moves_to.h"
#include "edits/edit.h"
#include "edits/pieces.h"

namespace wallwright::arrange {

Result<wall::Project> with_layout(const wall::Project& project, const Task& task,
                                  const Layout& layout) {
    const std::vector<wall::PieceId> off = ids_left_out(task, layout);
    return edits::place(project, moves_to(task, layout)).and_then([&off](wall::Project moved) {
        return edits::take_down(std::move(moved), off);
    });
}

}  // namespace wallwright::arrange
