// Which planned pieces must not go up as they are.
#pragma once

#include "rules/assess.h"

#include <string>
#include <vector>

namespace wallwright::rules {

/// Its findings of severity stop, in the order of the findings.
std::vector<const wall::Finding*> stops_of(const Assessment& assessment,
                                           const wall::PieceId& piece);

/// Planned pieces that have fixings and a stop, in the project's order.
std::vector<wall::PieceId> stopped_pieces(const wall::Project& project,
                                          const Assessment& assessment);

/// Planned pieces that nothing was found to hang on, and so have no mark, in the project's order.
std::vector<wall::PieceId> unmarked_pieces(const wall::Project& project,
                                           const Assessment& assessment);

/// Why it has no mark: the sentence of its first stop, else of its first finding; never empty.
/// The piece's own title is not before it.
std::string why_unmarked(const wall::Project& project, const Assessment& assessment,
                         const wall::PieceId& piece);

/// What a rule's stop comes to, for where there is room for few words: "cables may run here".
std::string few_words(const wall::Finding& stop);

}  // namespace wallwright::rules
