// The shopping list for other programs.
#pragma once

#include "buying/shopping.h"

#include <string>

namespace wallwright::pages {

/// "kind,title,amount,why,price,later", lines ended by CR LF (RFC 4180). A remark is a line of the
/// kind "remark" whose title is its sentence.
std::string list_csv(const buying::List& list);

}  // namespace wallwright::pages
