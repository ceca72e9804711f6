// The button that begins slow work, and while that runs ends it.
#pragma once

#include "app/ui.h"

#include <string>

namespace wallwright::app {

struct SearchButton {
    const char* name;  ///< For the probe.
    const char* begin;
    const char* end;
    std::string why;        ///< The tooltip of `begin`.
    std::string why_end;    ///< That of `end`.
    std::string hindrance;  ///< Why it cannot begin; empty when it can.
};

enum class SearchPress { none, begin, end };

/// As wide as there is room, with a bar below of how much is done, 0 to 1, while it runs; then the
/// next frames come without a hand.
SearchPress search_button(Ui& ui, const SearchButton& button, bool is_running, double done);

}  // namespace wallwright::app
