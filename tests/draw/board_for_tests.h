// A drawing board over a scene, for tests of the parts of an elevation.
#pragma once

#include "draw/board.h"
#include "draw/tint.h"
#include "rules/assess.h"
#include "support/scenes.h"

#include <memory>

namespace wallwright::test {

/// Owns all that its board looks at.
class BoardFor {
  public:
    explicit BoardFor(wall::Project project, double scale = 0.05)
        : project_(std::move(project)),
          assessment_(rules::assess(project_, scenes::small_catalogue())),
          options_{.scale = scale, .picture_folder = {}, .stage = {}},
          board_{{scale, project_.unit},
                 project_,
                 assessment_,
                 options_,
                 geometry::bounds(project_.room.outline),
                 draw::own(draw::wash(project_.room.colour))} {}
    BoardFor(const BoardFor&) = delete;
    BoardFor& operator=(const BoardFor&) = delete;

    [[nodiscard]] draw::Board& board() { return board_; }
    [[nodiscard]] const rules::Assessment& assessment() const { return assessment_; }
    [[nodiscard]] draw::WallDrawing drawing() const { return {board_.wall, board_.shapes}; }

  private:
    wall::Project project_;
    rules::Assessment assessment_;
    draw::ElevationOptions options_;
    draw::Board board_;
};

}  // namespace wallwright::test
