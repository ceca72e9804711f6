// What stands on the papers for the wall about pieces that must not go up as they are.
#pragma once

#include "pages/flow.h"
#include "rules/stops.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// "D Gull".
std::string letter_and_title(const wall::Project& project, const wall::PieceId& piece);

/// "Stop: cables may run here"; "" for a piece that nothing stops.
std::string stop_words(const rules::Assessment& assessment, const wall::PieceId& piece);

/// "2 pieces have a stop: D Gull, H Fog. See the findings."; "" where none has.
std::string stopped_words(const wall::Project& project, const rules::Assessment& assessment);

/// "D Gull has no mark: a cord of 480 mm reaches ..." for each that has none.
std::vector<std::string> unmarked_words(const wall::Project& project,
                                        const rules::Assessment& assessment);

/// "D Gull has no mark: its hanger does not fit." of each on one line; "" where all have marks.
std::string short_unmarked_words(const wall::Project& project, const rules::Assessment& assessment);

/// Both by letters on one line, for little room: "2 pieces have a stop: D, H. K has no
/// mark. See the findings."; "" where there is nothing to say.
std::string short_stop_words(const wall::Project& project, const rules::Assessment& assessment);

/// mm from the left edge of a stop sign to the words beside it, for letters of this size.
double stop_indent(double size);
/// A stop sign before words on the base line at `at`, whose letters are of this size.
void add_stop_sign(Shapes& shapes, Spot at, double size);
/// One line with that sign, its base line at `at`, shortened to `width`; how wide it is, mm.
double add_stop_line(Shapes& shapes, Spot at, const std::string& words, const Type& type,
                     double width);

/// Which pieces have a stop, and which have no mark and why, each with its sign; nothing where all
/// is well.
void add_stop_notes(Flow& flow, const wall::Project& project, const rules::Assessment& assessment);

}  // namespace wallwright::pages
