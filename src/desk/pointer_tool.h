// The pointer on the wall: select, drag, resize, draw a band. A state machine fed in millimetres.
#pragma once

#include "desk/hit.h"
#include "desk/piece_drag.h"
#include "desk/room_drag.h"
#include "desk/session.h"
#include "desk/showing.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace wallwright::desk {

/// One event of the pointer. `mm_per_pixel` turns distances of the hand into distances of the wall.
struct PointerEvent {
    geometry::Point<geometry::Wall> at;
    double mm_per_pixel = 1;
    bool shift = false;  ///< Adds to the selection; keeps a drag level or plumb.
    bool alt = false;    ///< No snapping.
};

enum class Cursor { arrow, move, resize_across, resize_up, resize_both };

/// Press, move and release come in turn; cancel ends any gesture without a step. Nothing moves
/// until the hand has gone 4 px. A drag is one step of the history: "Move Kelp", "Hang Kelp on the
/// wall" for one taken from the floor, "Take Kelp down" for one dropped below the floor, "Resize
/// the sofa". A hung or pinned piece does not move; a notice says why. What is dragged carries the
/// whole selection along when it is part of it.
class PointerTool {
  public:
    void press(Session& session, const std::vector<Waiting>& waiting, Step step,
               const PointerEvent& event);
    void move(Session& session, const std::vector<Waiting>& waiting, Step step,
              const PointerEvent& event);
    void release(Session& session, const PointerEvent& event);
    void cancel(Session& session);

    [[nodiscard]] bool is_busy() const { return !std::holds_alternative<Idle>(state_); }
    [[nodiscard]] const Showing& showing() const { return showing_; }
    [[nodiscard]] Cursor cursor() const { return cursor_; }

  private:
    struct Idle {};
    /// Pressed, not yet moved far enough to be a drag.
    struct Pressed {
        PointerEvent from;
        std::optional<Hit> hit;
        bool was_selected = false;
    };
    struct Drag {
        PointerEvent from;
        std::variant<PieceDrag, ThingDrag, ResizeDrag, CornerDrag> what;
        std::string label;             ///< Of the step that a release would make.
        std::optional<Notice> notice;  ///< Said as long as nothing else is wrong.
    };
    /// Dragging what may not move.
    struct Stuck {};
    struct Band {
        PointerEvent from;
        Selection before;
    };
    using State = std::variant<Idle, Pressed, Drag, Stuck, Band>;

    void hover(const Session& session, const std::vector<Waiting>& waiting, Step step,
               const PointerEvent& event);
    [[nodiscard]] static State begin(Session& session, const std::vector<Waiting>& waiting,
                                     const Pressed& pressed);
    [[nodiscard]] static State begin_thing(Session& session, const std::vector<Waiting>& waiting,
                                           const PointerEvent& from, const Thing& thing);
    void follow_drag(Session& session, Drag& drag, const PointerEvent& event);
    void follow_band(Session& session, const std::vector<Waiting>& waiting, const Band& band,
                     const PointerEvent& event);
    static void click(Session& session, const Pressed& pressed);
    void finish();

    State state_;
    Showing showing_;
    Cursor cursor_ = Cursor::arrow;
};

}  // namespace wallwright::desk
