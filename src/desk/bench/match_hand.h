// The hand on the view of prints and frames: what is under it, a print that it carries to a frame,
// a lock that it opens or shuts.
#pragma once

#include "desk/bench/match_links.h"
#include "desk/bench/match_moves.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace wallwright::desk {

/// The link from this print to this piece; `lock` for the sign on it.
struct LinkAt {
    wall::PrintId print;
    wall::PieceId piece;
    bool lock = false;
    bool operator==(const LinkAt&) const = default;
};
using BoardThing = std::variant<wall::PrintId, wall::PieceId, LinkAt>;

/// What the pointer is over: a print or a frame before a lock, that before a line within `reach`
/// mm.
std::optional<BoardThing> board_hit(const MatchLayout& layout, const std::vector<Link>& links,
                                    geometry::Point<geometry::Wall> at, double reach);

/// What a person may want to know about it: of a print, a frame or a line what the match says and
/// what else could be. Empty for nothing to say.
std::string board_words(const wall::Project& project, const MatchChoice& choice,
                        const BoardThing& thing);

/// The view as it is now, for the hand.
struct MatchScene {
    const MatchLayout& layout;
    const std::vector<Link>& links;
};

struct BoardEvent {
    geometry::Point<geometry::Wall> at;  ///< mm of the board.
    double pixel = 1;                    ///< mm that one pixel covers.
};

/// A print in the hand, over one frame or none.
struct CarriedPrint {
    wall::PrintId print;
    std::optional<wall::PieceId> from;  ///< The frame it was taken from.
    geometry::Rect<geometry::Wall> place;
    std::optional<wall::PieceId> over;
    std::string words;  ///< What comes of letting it go here.
    bool will_do = true;
};

class MatchHand {
  public:
    /// Selected: it is what the column speaks of. Not of the session, since a print alone is no
    /// thing on the wall; a frame that is pressed is selected in the session.
    std::optional<wall::PrintId> chosen;

    void press(Session& session, const MatchScene& scene, const BoardEvent& event);
    void move(const Session& session, const MatchScene& scene, const BoardEvent& event);
    void release(Session& session, const MatchScene& scene, const BoardEvent& event);
    void cancel();
    void leave() { hovered_.reset(); }

    [[nodiscard]] bool is_busy() const { return held_.has_value(); }
    [[nodiscard]] const std::optional<BoardThing>& hovered() const { return hovered_; }
    [[nodiscard]] const std::optional<CarriedPrint>& carried() const { return carried_; }
    /// Forgets a chosen print that is there no longer.
    void keep_only_in(const wall::Project& project);

  private:
    struct Held {
        BoardThing thing;
        geometry::Point<geometry::Wall> from;
    };

    void carry(const Session& session, const MatchScene& scene, const BoardEvent& event);
    void click(Session& session, const BoardThing& thing);

    std::optional<BoardThing> hovered_;
    std::optional<Held> held_;
    std::optional<CarriedPrint> carried_;
};

}  // namespace wallwright::desk
