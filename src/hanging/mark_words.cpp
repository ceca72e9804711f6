#include "hanging/mark_words.h"

#include "base/contract.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::hanging {

std::string seat_words(wall::FixingKind kind) {
    switch (kind) {
        case wall::FixingKind::nail_hook:
            return "Hook: the ring or the cord comes to rest on the cross; the nail goes in above.";
        case wall::FixingKind::screw:
            return "Screw: the ring or the cord rests on its shank, so set its middle half the "
                   "shank's thickness below the cross. Closed hook: its eye bears on the cross.";
        case wall::FixingKind::rail_hook:
            return "Rail hook: the mark is on the picture rail; the cord is measured from where "
                   "it hangs in the hook down to where the piece hangs by it.";
        case wall::FixingKind::strip_pair:
            return "";
    }
    broken_contract("every fixing sits somehow on its mark", __FILE__, __LINE__);
}

std::string minus_words(const wall::Project& project, std::span<const Mark> marks) {
    const auto has_minus = [](const Mark& mark) {
        return mark.across < 0 || (mark.up < 0 && mark.kind != MarkKind::rail);
    };
    if (std::ranges::none_of(marks, has_minus))
        return "";
    if (project.datum.height == wall::DatumHeight::level_line)
        return "A minus is below the level line.";
    if (!datum_place(project) || project.datum.height != wall::DatumHeight::piece)
        return "";
    return fmt::format("A minus is back over {}, or below its top edge.",
                       title_of(project, *project.datum.piece));
}

}  // namespace wallwright::hanging
