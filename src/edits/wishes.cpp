#include "edits/wishes.h"

#include "edits/look_up.h"
#include "edits/sound.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::edits {

using wall::MeasureWeight;
using wall::Piece;
using wall::PieceId;
using wall::Project;
using wall::Wish;

namespace {

bool is_thing(const wall::Target& target, const wall::ThingId& thing) {
    return std::visit([&target](const auto& id) { return target == wall::Target(id); }, thing);
}

}  // namespace

Result<Project> add_wish(Project project, Wish wish) {
    const auto says_it = [&wish](const Wish& one) { return is_same_wish(one, wish); };
    if (std::ranges::any_of(project.wishes, says_it))
        return fail({fmt::format("pieces/{}", wish.first.text), "this is wished already",
                     "take the wish back first to change it", ""});
    project.wishes.push_back(std::move(wish));
    return sound(std::move(project));
}

Result<Project> remove_wish(Project project, std::size_t index) {
    const std::size_t count = project.wishes.size();
    if (index >= count)
        return fail({fmt::format("wishes/#{}", index + 1), "there is no such wish",
                     count == 0 ? "there are no wishes to take back"
                                : fmt::format("give one from #1 to #{}", count),
                     ""});
    project.wishes.erase(project.wishes.begin() + static_cast<std::ptrdiff_t>(index));
    return sound(std::move(project));
}

Result<Project> set_target(Project project, std::optional<wall::Target> target) {
    if (project.target != target)
        project.target_unknown.clear();
    project.target = std::move(target);
    return sound(std::move(project));
}

Result<Project> set_weight(Project project, const std::string& measure,
                           std::optional<double> weight) {
    std::vector<MeasureWeight>& weights = project.weights;
    const auto found = std::ranges::find(weights, measure, &MeasureWeight::measure);
    if (!weight && found != weights.end())
        weights.erase(found);
    else if (weight && found != weights.end())
        found->weight = *weight;
    else if (weight)
        weights.push_back({measure, *weight});
    return sound(std::move(project));
}

Result<Project> set_wished(Project project, PieceIds ids, bool wished) {
    const auto pieces = pieces_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    for (Piece* piece : *pieces) {
        if (wished && piece->state == wall::PieceState::hung)
            return fail({"pieces/" + piece->id.text, "it hangs already, so its frame is bought",
                         "call it planned to wish for another frame", ""});
        piece->wished = wished;
    }
    return sound(std::move(project));
}

Result<Project> clear_stages(Project project) {
    for (Piece& piece : project.pieces)
        piece.stage = 0;
    return sound(std::move(project));
}

void drop_wishes_about(Project& project, PieceIds ids) {
    const auto goes = [ids](const PieceId& id) { return std::ranges::find(ids, id) != ids.end(); };
    std::erase_if(project.wishes, [&goes](const Wish& wish) {
        return goes(wish.first) || (wish.second && goes(*wish.second));
    });
}

void drop_wishes_about(Project& project, const wall::ThingId& thing) {
    std::erase_if(project.wishes, [&thing](const Wish& wish) { return wish.thing == thing; });
    if (project.target && is_thing(*project.target, thing)) {
        project.target.reset();
        project.target_unknown.clear();
    }
}

}  // namespace wallwright::edits
