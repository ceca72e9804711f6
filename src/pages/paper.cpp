#include "pages/paper.h"

#include <algorithm>
#include <cctype>
#include <iterator>
#include <string>

namespace wallwright::pages {

namespace {

struct Named {
    std::string_view name;
    geometry::Size size;
};

/// In the order of Paper. Letter is 8 1/2 by 11 in.
constexpr Named kPapers[] = {{"a4", {210, 297}}, {"letter", {215.9, 279.4}}, {"a3", {297, 420}}};

}  // namespace

geometry::Size size_of(Paper paper) {
    return kPapers[static_cast<std::size_t>(paper)].size;
}

std::optional<Paper> paper_named(std::string_view name) {
    std::string lower(name);
    std::transform(lower.begin(), lower.end(), lower.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::tolower(letter)); });
    for (std::size_t i = 0; i < std::size(kPapers); ++i)
        if (kPapers[i].name == lower)
            return static_cast<Paper>(i);
    return std::nullopt;
}

}  // namespace wallwright::pages
