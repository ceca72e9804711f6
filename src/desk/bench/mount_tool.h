// The pointer on the front of a mount: drag a window or an edge of one. Fed in millimetres of the
// blank.
#pragma once

#include "desk/bench/mount_drag.h"
#include "desk/pointer_tool.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace wallwright::desk {

/// One event of the pointer.
struct MountEvent {
    geometry::Point<mounts::Front> at;
    double mm_per_pixel = 1;
    bool alt = false;  ///< No snapping.
};

/// What is to be drawn over the mount.
struct MountShowing {
    std::optional<MountPart> part;  ///< Under the pointer, or held.
    bool is_held = false;
    std::vector<MountGuide> guides;
    std::string words;  ///< The number that changes; what could be done while nothing is held.
};

/// Press, move and release come in turn; cancel ends the drag without a step. Nothing moves until
/// the hand has gone 4 px. A drag is one step of the history. A piece whose mount cannot be made
/// has nothing to take.
class MountTool {
  public:
    void press(Session& session, const wall::PieceId& piece, const MountEvent& event);
    void move(Session& session, const wall::PieceId& piece, const MountEvent& event);
    void release(Session& session, const MountEvent& event);
    void cancel(Session& session);
    /// The pointer is elsewhere.
    void leave();

    [[nodiscard]] bool is_busy() const { return !std::holds_alternative<Idle>(state_); }
    [[nodiscard]] const MountShowing& showing() const { return showing_; }
    [[nodiscard]] Cursor cursor() const;

  private:
    struct Idle {};
    /// Pressed, not yet moved far enough to be a drag.
    struct Pressed {
        wall::PieceId piece;
        MountEvent from;
        std::optional<MountPart> part;
    };
    struct Drag {
        wall::PieceId piece;
        MountEvent from;
        MountPart part;
        std::string label;  ///< Of the step that a release would make.
    };

    void hover(const Session& session, const wall::PieceId& piece, const MountEvent& event);
    void follow(Session& session, Drag& drag, const MountEvent& event);
    void finish();

    std::variant<Idle, Pressed, Drag> state_;
    MountShowing showing_;
};

/// The windows of a piece's mount go by its rule again, in a row or a column as they lie; nothing
/// where none is placed by hand. As one step.
void centre_windows(Session& session, const wall::PieceId& piece);
/// Whether any window of the mount is placed by hand.
bool is_by_hand(const wall::Mount& mount);

}  // namespace wallwright::desk
