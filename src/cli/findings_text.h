// Findings as lines in a terminal.
#pragma once

#include "wall/finding.h"

#include <string>
#include <vector>

namespace wallwright::cli {

/// One line a finding: its severity, its sentence, its rule in brackets; then how many there are of
/// each.
std::string findings_text(const std::vector<wall::Finding>& findings);

/// "1 stop, 2 minds", for a cell of a table; "none" where there are only notes.
std::string counts_text(const std::vector<wall::Finding>& findings);

/// A line for where even or well arranged pieces are not yet a safe wall; empty where they are.
std::string stops_text(const std::vector<wall::Finding>& findings);

}  // namespace wallwright::cli
