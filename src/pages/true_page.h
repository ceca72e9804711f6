// A part of a drawing at true size on paper: cut off at its edges, words where there is room.
#pragma once

#include "pages/sheet.h"
#include "pages/true_drawing.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// Where words may go on one page without running into each other.
class WordRoom {
  public:
    explicit WordRoom(Area area) : area_(area) {}
    void take(const Area& place) { taken_.push_back(place); }
    /// Inside, and nothing there yet.
    [[nodiscard]] bool is_free(const Area& place) const;
    [[nodiscard]] const Area& area() const { return area_; }

  private:
    Area area_;
    std::vector<Area> taken_;
};

/// Puts the part of the drawing that lies in `shown` where the transform says, at true size; then
/// its words, each where there is room. What of the page is taken already is not written on.
void add_part(Shapes& shapes, WordRoom& room, const TrueDrawing& drawing,
              const geometry::Rect<geometry::Wall>& shown,
              const geometry::Transform<geometry::Wall, geometry::Page>& to_page);

/// The number and lines of one tag beside its point: the number always, the lines where there is
/// room.
void add_tag(Shapes& shapes, WordRoom& room, const Tag& tag, Spot at);

/// Two lines through a point and a ring about it, that must lie on the same of another page.
void add_join_mark(Shapes& shapes, Spot at);
inline constexpr double kJoinReach = 3.5;  ///< mm
/// Join marks and the lines through them, the only lines of this stroke.
inline const draw::Stroke kJoinStroke{{draw::Ink::accent}, 0.18};

/// Where the head of a page of templates ends below its beginning, mm.
inline constexpr double kHeadHeight = 24.5;
struct PageHead {
    std::string heading;
    std::string which;  ///< "Page A1 of 6".
    std::string how;
    std::string stop =
        {};  ///< In the place of `which`, which then goes before `how`; may be empty.
};
/// An arrow up at the left, then what the page is and what to do with it over `width` mm.
void add_head(Shapes& shapes, Spot at, double width, const PageHead& head);

}  // namespace wallwright::pages
