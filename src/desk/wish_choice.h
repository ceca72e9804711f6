// Wishes about the arrangement as a person makes and unmakes them.
#pragma once

#include "desk/session.h"

#include <optional>
#include <string>

namespace wallwright::desk {

/// "Kelp in the middle", "Kelp beside Dune", "Kelp not over the sofa".
std::string words_of(const wall::Project& project, const wall::Wish& wish);

/// Which of the project's wishes says the same, whoever of two is named first.
std::optional<std::size_t> find_wish(const wall::Project& project, const wall::Wish& wish);

/// Makes or unmakes it as one step. Of middle, low and high, and of side by side and apart, the
/// one replaces the other.
void set_wish(Session& session, const wall::Wish& wish, bool on);
/// The wish of this index, as one step.
void remove_wish(Session& session, std::size_t index);

}  // namespace wallwright::desk
