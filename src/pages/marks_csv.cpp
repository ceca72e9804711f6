#include "pages/marks_csv.h"

#include "pages/csv_line.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::pages {

namespace {

bool is_on_rail(const hanging::Mark& mark) {
    return mark.kind == hanging::MarkKind::rail;
}

}  // namespace

std::string marks_csv(const wall::Project& project, const hanging::MarksTable& table) {
    const bool staged = hanging::has_stages(table);
    std::vector<std::string> head = {"mark",  "piece",           "what",       "across_mm",
                                     "up_mm", "across_error_mm", "up_error_mm"};
    const bool on_rail = std::ranges::any_of(table.marks, is_on_rail);
    if (on_rail)
        head.emplace_back("cord_mm");
    if (staged)
        head.emplace_back("stage");
    std::string text = csv_line(head);
    for (const hanging::Mark& mark : table.marks) {
        std::vector<std::string> line = {std::to_string(mark.number),
                                         title_to_hang(project, mark.piece),
                                         mark.what,
                                         fmt::format("{:.2f}", mark.across),
                                         fmt::format("{:.2f}", mark.up),
                                         fmt::format("{:.2f}", mark.across_error),
                                         fmt::format("{:.2f}", mark.up_error)};
        if (on_rail)
            line.push_back(is_on_rail(mark) ? fmt::format("{:.2f}", mark.cord) : "");
        if (staged)
            line.push_back(mark.stage > 0 ? std::to_string(mark.stage) : "");
        text += csv_line(line);
    }
    return text;
}

}  // namespace wallwright::pages
