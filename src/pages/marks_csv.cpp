#include "pages/marks_csv.h"

#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::pages {

std::string csv_line(const std::vector<std::string>& fields) {
    std::string line;
    for (const std::string& field : fields) {
        if (!line.empty() || &field != &fields.front())
            line += ',';
        if (field.find_first_of(",\"\r\n") == std::string::npos) {
            line += field;
            continue;
        }
        line += '"';
        for (const char c : field)
            line += c == '"' ? std::string("\"\"") : std::string(1, c);
        line += '"';
    }
    return line + "\r\n";
}

std::string marks_csv(const wall::Project& project, const hanging::MarksTable& table) {
    const bool staged = hanging::has_stages(table);
    std::vector<std::string> head = {"mark",  "piece",           "what",       "across_mm",
                                     "up_mm", "across_error_mm", "up_error_mm"};
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
        if (staged)
            line.push_back(mark.stage > 0 ? std::to_string(mark.stage) : "");
        text += csv_line(line);
    }
    return text;
}

}  // namespace wallwright::pages
