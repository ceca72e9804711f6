// Layouts as the commands print them: what a tape can verify, and the score's reasons.
#pragma once

#include "arrange/score.h"
#include "cli/json_out.h"
#include "spacing/group.h"

#include <span>
#include <string>

namespace wallwright::cli {

/// "14, all 60" or "14, 58 to 60"; "none".
std::string gaps_text(const spacing::Group& group, units::LengthUnit unit);

/// Total, and each measure with its value, weight and sentence; a value is null where there is
/// nothing to judge.
Json json_of(const arrange::Score& score, const arrange::View& view, units::LengthUnit unit);
/// Every piece of the layout with its place, and whether it stays where it was.
Json json_of(const arrange::Task& task, const arrange::Layout& layout);
/// Their ids.
Json json_of_ids(std::span<const wall::PieceId> pieces);

/// A line a measure: its sentence, its value out of 100 or "-" where there is nothing to judge, its
/// weight.
std::string measures_text(const arrange::Score& score, const arrange::View& view,
                          units::LengthUnit unit);
/// A line a piece that does not stay: its letter on the picture, where its left and bottom edges
/// go.
std::string places_text(const wall::Project& project, const arrange::Task& task,
                        const arrange::Layout& layout, units::LengthUnit unit);

/// 0 to 100 with one decimal.
std::string points(double total);

}  // namespace wallwright::cli
