// What a deed is called, its numbers in the person's unit, and what to know before it is done.
#pragma once

#include "desk/hang/companion.h"

#include <string>
#include <vector>

namespace wallwright::desk {

/// One number to measure off.
struct DeedFigure {
    std::string label;      ///< "Across from the left corner"
    std::string number;     ///< "1234.5"
    std::string unit;       ///< "mm"
    std::string tolerance;  ///< "± 1.1 mm"; empty where nothing is said of it.
};

struct DeedWords {
    std::string task;   ///< "Mark 5: the left hook"
    std::string piece;  ///< "B  Dune"; empty for the line.
    /// Why its piece is not to go up as it is planned: the findings that say stop.
    std::vector<std::string> stops;
    std::vector<DeedFigure> figures;  ///< At most two.
    std::vector<std::string> checks;  ///< What to measure afterwards.
    std::vector<std::string> lines;   ///< How it is done.
    std::vector<std::string> cautions;
};

/// Of one of the companion's deeds.
DeedWords words_of(const Companion& day, const Deed& deed);

/// "Kelp": what is still to be done of it, as "2 of 4 marks", "to fix", "to hang", "hangs".
std::string state_words(const Companion& day, const UpToday& piece);

}  // namespace wallwright::desk
