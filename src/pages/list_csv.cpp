#include "pages/list_csv.h"

#include "pages/csv_line.h"

#include <fmt/format.h>

namespace wallwright::pages {

std::string list_csv(const buying::List& list) {
    std::string text = csv_line({"kind", "title", "amount", "why", "price", "later"});
    for (const buying::Item& item : list.items)
        text += csv_line({std::string(wall::name_of(item.kind)), item.title, item.amount, item.why,
                          item.price ? fmt::format("{:.2f}", *item.price) : "",
                          item.later ? "yes" : "no"});
    for (const std::string& remark : list.remarks)
        text += csv_line({"remark", remark, "", "", "", ""});
    return text;
}

}  // namespace wallwright::pages
