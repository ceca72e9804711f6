// What the bench's views share: the area that has the mouse, and words that come up where the
// pointer rests.
#pragma once

#include "app/panels/panels.h"
#include "desk/bench/bench.h"

#include <string>

namespace wallwright::app {

/// What the mouse does with the area.
struct BoardMouse {
    bool hovered = false;
    bool active = false;
    bool activated = false;
    bool deactivated = false;
    [[nodiscard]] bool is_pressed() const;  ///< The left button, and not to pan.
};

/// Gives the area to the mouse under that name.
BoardMouse take_board(Ui& ui, const char* name, const ScreenArea& area);

/// px for a mm on paper, for words and lines: as on the wall, but less where the area is so small
/// that large words would leave no room for what they name.
double board_pixels(const Ui& ui, const ScreenArea& area);
/// mm on paper for a mm of the board.
double board_scale(const Ui& ui, const desk::View& view, const ScreenArea& area);

/// mm on paper of the area less some air all round.
geometry::Size paper_of(const Ui& ui, const ScreenArea& area);

/// The pointer on the board, mm.
geometry::Point<geometry::Wall> board_point(const desk::View& view);

/// What the mouse does, to the hand of a board: a press and its release may come in one frame.
template <class Hand, class Scene, class Event>
void move_hand(Hand& hand, desk::Session& session, const Scene& scene, const Event& event,
               const BoardMouse& mouse) {
    if (mouse.is_pressed())
        hand.press(session, scene(), event);
    else if (mouse.hovered || hand.is_busy())
        hand.move(session, scene(), event);
    else
        hand.leave();
    if (mouse.deactivated && hand.is_busy())
        hand.release(session, scene(), event);
    // A dialog took the release.
    if (hand.is_busy() && !ImGui::IsMouseDown(ImGuiMouseButton_Left))
        hand.cancel();
}

/// What of the board can be seen, less some air.
geometry::Rect<geometry::Wall> sight_of(const Ui& ui, const desk::View& view,
                                        const ScreenArea& area);

void paint_board(const Ui& ui, const desk::View& view, const ScreenArea& area,
                 std::initializer_list<std::span<const draw::Shape<geometry::Wall>>> layers);

/// Names a place on the board for tests.
void note_on_board(Ui& ui, const desk::View& view, const std::string& name,
                   const geometry::Rect<geometry::Wall>& place);

/// Words by the pointer once it has rested for a moment where `what` is.
void board_tip(Ui& ui, const std::string& what, const std::string& words);

/// In the middle of the area, wrapped.
void say_on_board(const Ui& ui, const ScreenArea& area, const std::string& words);

}  // namespace wallwright::app
