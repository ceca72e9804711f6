#include "desk/wish_choice.h"

#include "edits/wishes.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::desk {

namespace {

using wall::Wish;
using wall::WishKind;

std::string title_of(const wall::Project& project, const wall::ThingId& thing) {
    return std::visit([&project](const auto& id) { return desk::title_of(project, Thing(id)); },
                      thing);
}

bool is_about_the_same(const Wish& a, const Wish& b) {
    return (a.first == b.first && a.second == b.second) ||
           (a.second && b.second && a.first == *b.second && *a.second == b.first);
}

/// Whether both cannot be had.
bool is_instead(const Wish& a, const Wish& b) {
    const bool same_sort = wall::is_about_two(a.kind) == wall::is_about_two(b.kind);
    const bool about_things = a.kind == WishKind::not_over || b.kind == WishKind::not_over;
    return same_sort && !about_things && a.kind != b.kind && is_about_the_same(a, b);
}

Result<wall::Project> without_rivals(wall::Project project, const Wish& wish) {
    Result<wall::Project> left = std::move(project);
    for (std::size_t i = left->wishes.size(); i-- > 0;)
        if (left && is_instead(left->wishes[i], wish))
            left = edits::remove_wish(std::move(*left), i);
    return left;
}

}  // namespace

std::string words_of(const wall::Project& project, const Wish& wish) {
    const std::string first = wall::title_of(project, wish.first);
    const std::string second = wish.second ? wall::title_of(project, *wish.second) : "";
    switch (wish.kind) {
        case WishKind::side_by_side:
            return fmt::format("{} beside {}", first, second);
        case WishKind::apart:
            return fmt::format("{} apart from {}", first, second);
        case WishKind::middle:
            return fmt::format("{} in the middle", first);
        case WishKind::low:
            return fmt::format("{} low", first);
        case WishKind::high:
            return fmt::format("{} high", first);
        case WishKind::not_over:
            break;
    }
    return fmt::format("{} not over {}", first,
                       wish.thing ? title_of(project, *wish.thing) : second);
}

std::optional<std::size_t> find_wish(const wall::Project& project, const Wish& wish) {
    const auto found = std::ranges::find_if(
        project.wishes, [&wish](const Wish& one) { return wall::is_same_wish(one, wish); });
    if (found == project.wishes.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - project.wishes.begin());
}

void set_wish(Session& session, const Wish& wish, bool on) {
    const wall::Project& kept = session.kept();
    const auto index = find_wish(kept, wish);
    if (on == index.has_value())
        return;
    if (!on)
        return remove_wish(session, *index);
    auto made = without_rivals(kept, wish);
    if (made)
        made = edits::add_wish(std::move(*made), wish);
    session.apply(fmt::format("Wish {}", words_of(kept, wish)), std::move(made));
}

void remove_wish(Session& session, std::size_t index) {
    const wall::Project& kept = session.kept();
    const std::string words = index < kept.wishes.size() ? words_of(kept, kept.wishes[index]) : "";
    session.apply(fmt::format("No longer wish {}", words), edits::remove_wish(kept, index));
}

}  // namespace wallwright::desk
