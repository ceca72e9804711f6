// The list in words, for the command line, the pages and the app alike.
#pragma once

#include "buying/shopping.h"

#include <string>
#include <string_view>

namespace wallwright::buying {

/// "Fixings", "Frames": over the items of a kind.
std::string_view heading_of(Kind kind);

/// The person's money without its sign: two decimals unless it is whole.
std::string money(double amount);

/// "Together 23.50, plus 2 without a price."
std::string total_words(const List& list);

}  // namespace wallwright::buying
