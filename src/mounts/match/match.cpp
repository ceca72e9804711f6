#include "mounts/match/match.h"

#include "mounts/match/field.h"
#include "mounts/match/match_words.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

using wall::Project;

constexpr std::size_t kAlternatives = 2;

bool is_left(const Assignment& assignment, std::size_t row) {
    return !assignment.column_of[row].has_value();
}

Alternative alternative(const Project& project, const Field& field, std::size_t row,
                        const Assignment& now, const Assignment& other) {
    Alternative made{field.places[*other.column_of[row]].piece->id, field.cost_of(other), {}, {}};
    for (const std::size_t one : other.left_rows)
        if (!is_left(now, one))
            made.left.push_back(field.prints[one]->id);
    made.text = alternative_text(project, field.prints[row]->id, made, field.cost_of(now));
    return made;
}

/// The frame a print has is forbidden to it and all is matched anew, and the same once more.
std::vector<Alternative> alternatives(const Project& project, const Field& field,
                                      const Assignment& now, std::size_t row) {
    std::vector<Alternative> made;
    CostTable table = field.table;
    table.at(row, *now.column_of[row]) = kForbidden;
    while (made.size() < kAlternatives) {
        const Assignment other = least_cost(table, row);
        if (is_left(other, row))
            break;
        made.push_back(alternative(project, field, row, now, other));
        table.at(row, *other.column_of[row]) = kForbidden;
    }
    return made;
}

Pair pair_of(const Project& project, const Field& field, const Assignment& found, std::size_t row) {
    const std::size_t column = *found.column_of[row];
    const wall::Piece& piece = *field.places[column].piece;
    Pair pair{field.prints[row]->id,
              piece.id,
              field.fitting(row, column),
              field.kept[row].has_value(),
              piece.print != field.prints[row]->id,
              {},
              {}};
    pair.text = pair_text(project, pair);
    if (!pair.kept)
        pair.alternatives = alternatives(project, field, found, row);
    return pair;
}

LeftPrint left_print(const Project& project, const Field& field, std::size_t row) {
    LeftPrint left{field.prints[row]->id, true, {}};
    for (std::size_t column = 0; column < field.places.size(); ++column)
        if (field.fitting(row, column))
            left.fits_none = false;
    left.text = left_text(project, left);
    return left;
}

/// What a frame on offer changes against `now`; empty where it does not help.
std::optional<OneMore> gain_of(const Project& project, const Field& without, const Assignment& now,
                               const FrameOnOffer& offered) {
    const Field field = with_frame(without, offered.frame);
    const Assignment found = least_cost(field.table);
    const auto row = std::ranges::find(found.column_of, field.places.size() - 1);
    if (row == found.column_of.end())
        return std::nullopt;
    OneMore one;
    one.size_name = offered.size_name;
    const auto print = static_cast<std::size_t>(row - found.column_of.begin());
    one.print = field.prints[print]->id;
    one.mounted = field.fitting(print, field.places.size() - 1)->mounted;
    for (const std::size_t left : now.left_rows)
        if (!is_left(found, left))
            one.framed.push_back(field.prints[left]->id);
    one.total = field.cost_of(found);
    one.saved = without.cost_of(now) - one.total;
    if (found.left_rows.size() == now.left_rows.size() && one.saved <= 0)
        return std::nullopt;
    one.text = one_more_text(project, one);
    return one;
}

}  // namespace

Match match_prints(const Project& project) {
    const Field field = field_of(project);
    const Assignment found = least_cost(field.table);
    Match match;
    match.total = field.cost_of(found);
    for (std::size_t row = 0; row < field.prints.size(); ++row)
        if (is_left(found, row))
            match.left_prints.push_back(left_print(project, field, row));
        else
            match.pairs.push_back(pair_of(project, field, found, row));
    for (const std::size_t column : found.left_columns) {
        LeftPiece left{field.places[column].piece->id, {}};
        left.text = left_text(project, left);
        match.left_pieces.push_back(left);
    }
    return match;
}

std::vector<OneMore> one_more_frame(const Project& project,
                                    const std::vector<FrameOnOffer>& offered, std::size_t count) {
    const Field field = field_of(project);
    const Assignment now = least_cost(field.table);
    struct Candidate {
        OneMore one;
        double area = 0;
    };
    std::vector<Candidate> helpful;
    for (const FrameOnOffer& frame : offered)
        if (std::optional<OneMore> one = gain_of(project, field, now, frame))
            helpful.push_back({*std::move(one), frame.frame.outside.area()});
    std::ranges::stable_sort(helpful, [](const Candidate& a, const Candidate& b) {
        if (a.one.framed.size() != b.one.framed.size())
            return a.one.framed.size() > b.one.framed.size();
        return a.one.total != b.one.total ? a.one.total < b.one.total : a.area < b.area;
    });
    helpful.resize(std::min(count, helpful.size()));
    std::vector<OneMore> result;
    for (Candidate& candidate : helpful)
        result.push_back(std::move(candidate.one));
    return result;
}

}  // namespace wallwright::mounts
