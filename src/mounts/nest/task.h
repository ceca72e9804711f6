// What is to be cut from card: blanks, and the sheets they may come from.
#pragma once

#include "geometry/rect.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace wallwright::mounts {

struct NestBlank {
    std::string id;
    geometry::Size size;  ///< mm, above 0.
    bool may_turn =
        true;  ///< By a quarter turn; false where its pattern or grain must stay upright.
};

/// Sheets of one kind.
struct NestSheet {
    std::string id;
    geometry::Size size;                    ///< mm, above 0.
    std::optional<std::size_t> count = {};  ///< How many there are; none: as many as it takes.
    bool to_buy = false;     ///< Not at hand: used only where those at hand do not suffice.
    double margin = 0;       ///< mm along every edge that are not used, 0 or more.
    double price = 0;        ///< Of one to buy; decides between plans that are equal otherwise.
    bool has_grain = false;  ///< No blank from it is turned.
    /// Index of the blank whose window it drops out of. There is one of it, once that blank is cut,
    /// and it does not count as a sheet. It must be smaller than the blank.
    std::optional<std::size_t> drop_out_of = {};
    /// Part of a sheet that is cut anyway: there is one of it, and it does not count as a sheet.
    bool taken = false;
    bool leaves_offcuts = true;  ///< What is left of it counts when offcuts are compared.
};

struct NestTask {
    std::vector<NestBlank> blanks;
    std::vector<NestSheet> sheets;
};

struct NestOptions {
    double seconds = 1;      ///< At most so long; without a bound when 0, then `rounds` is above 0.
    std::uint64_t seed = 1;  ///< The same seed and rounds without seconds give the same plan.
    std::uint64_t rounds = 0;  ///< At most so many, of some hundred tries each; 0: no bound.
    /// Each part of the search ends after so many rounds that bettered nothing; 0: it goes on.
    std::uint64_t patience = 0;
};

}  // namespace wallwright::mounts
