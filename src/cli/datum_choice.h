// What --datum says.
#pragma once

#include "cli/load.h"

namespace wallwright::cli {

/// "floor", "ceiling", "level" for the line that is proposed, a length for a level line so high, or
/// the id of a piece that hangs; with ",left" or ",right" behind it, else on the project's side.
/// The rest of the datum stays as the project has it.
Result<wall::Datum> chosen_datum(const std::string& words, const Loaded& loaded);

}  // namespace wallwright::cli
