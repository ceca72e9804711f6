// The hand on the sheets of card: what is under it, a blank that it carries to another place, a
// lock that it opens or shuts.
#pragma once

#include "desk/bench/card_choice.h"
#include "desk/bench/card_layout.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// A blank by whose it is, which stays when the plan becomes another.
struct BlankName {
    wall::PieceId piece;
    std::size_t layer = 0;  ///< Of its mount, 0 is the top one.
    bool operator==(const BlankName&) const = default;
};
BlankName name_of(const mounts::CardPlan& plan, const LaidBlank& blank);
bool is_kept(const mounts::CardPlan& plan, const LaidBlank& blank);

/// The plan as it lies before the person.
struct CardScene {
    const CardChoice& choice;
    const CardLayout& layout;
    const std::vector<LaidBlank>& blanks;
    double unit = 1;  ///< mm of the board for a mm on paper, for signs.
};

struct CardEvent {
    geometry::Point<geometry::Wall> at;  ///< mm of the board.
    double pixel = 1;                    ///< mm that one pixel covers.
    bool free = false;                   ///< Nothing snaps, nor is a blank held inside its sheet.
};

/// Its middle, in the blank's lower right corner: cuts have their numbers where they begin, above
/// and at the left.
geometry::Point<geometry::Wall> lock_of(const LaidBlank& blank, double unit);

struct CarriedBlank {
    BlankName name;
    std::size_t lot = 0;
    std::size_t blank = 0;  ///< Of the lot's task.
    bool turned = false;
    geometry::Rect<geometry::Wall> place;  ///< Where it would rest.
    std::optional<SheetAt> over;           ///< A sheet of its own card under the hand.
    std::optional<wall::KeptBlank> kept;   ///< What letting it go here keeps.
    std::string words;                     ///< Where it would lie, or why it cannot.
};

class CardHand {
  public:
    std::optional<BlankName> chosen;  ///< Selected.

    void press(Session& session, const CardScene& scene, const CardEvent& event);
    void move(const Session& session, const CardScene& scene, const CardEvent& event);
    void release(Session& session, const CardScene& scene, const CardEvent& event);
    void cancel();
    void leave() { hovered_.reset(); }
    /// A quarter turn of the blank in the hand. On a card with a grain it is told why not.
    void turn(Session& session, const CardScene& scene);

    [[nodiscard]] bool is_busy() const { return held_.has_value(); }
    [[nodiscard]] const std::optional<BlankName>& hovered() const { return hovered_; }
    [[nodiscard]] bool is_on_lock() const { return on_lock_; }
    /// In the hand, or let go and not laid out yet.
    [[nodiscard]] const std::optional<CarriedBlank>& carried() const { return carried_; }
    /// Once a frame, after the choice: what was let go is laid out by now, or will not be.
    void follow(const CardChoice& choice);
    void keep_only_in(const wall::Project& project);

  private:
    struct Held {
        LaidBlank blank;
        bool on_lock = false;
        geometry::Point<geometry::Wall> from;
        geometry::Vec<geometry::Wall> grip;  ///< From the blank's middle to the hand.
    };

    void carry(const Session& session, const CardScene& scene, const CardEvent& event);
    void settle(const Session& session, const CardScene& scene, const CardEvent& event);

    std::optional<BlankName> hovered_;
    bool on_lock_ = false;
    std::optional<Held> held_;
    std::optional<CarriedBlank> carried_;
    std::uint64_t carried_in_ = 0;  ///< The number of the plan.
    CardEvent last_{};
};

/// The blank stays where it lies, or may be laid elsewhere again: a step, or a notice why not.
void keep_or_free(Session& session, const CardScene& scene, const BlankName& blank);

}  // namespace wallwright::desk
