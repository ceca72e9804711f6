#include "rules/judge.h"

namespace wallwright::rules {

wall::Finding finding(wall::Severity severity, std::vector<wall::PieceId> pieces,
                      const geometry::Rect<geometry::Wall>& place, std::optional<Measure> measure,
                      std::string text) {
    wall::Finding made;
    made.severity = severity;
    made.pieces = std::move(pieces);
    made.place = place;
    made.text = std::move(text);
    if (measure) {
        made.measured = measure->measured;
        made.wanted = measure->wanted;
        made.unit = measure->unit;
    }
    return made;
}

}  // namespace wallwright::rules
