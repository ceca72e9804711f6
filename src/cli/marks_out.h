// The marks and what is to be known about them, as text and as JSON.
#pragma once

#include "cli/json_out.h"
#include "cli/load.h"

namespace wallwright::cli {

/// What they are measured from, the table, and a sentence on each of: pieces that have a stop or
/// no mark, signs, the floor's slope, stages, checks, gaps, the chain, the level line that would
/// serve.
std::string marks_text(const Loaded& loaded, const rules::Assessment& assessment);

/// "datum", "marks", "checks", "gaps", "chain", "rows" and so on, put into `json`.
void add_marks(Json& json, const Loaded& loaded, const rules::Assessment& assessment);

}  // namespace wallwright::cli
