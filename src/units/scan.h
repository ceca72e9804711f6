// Reading numbers the way people write them, shared by lengths and masses.
#pragma once

#include "base/problem.h"

#include <string_view>

namespace wallwright::units {

/// Walks over a text that a person typed.
class Scanner {
  public:
    explicit Scanner(std::string_view text) : text_(text) {}

    void skip_spaces();
    [[nodiscard]] bool at_end() const { return at_ == text_.size(); }
    [[nodiscard]] bool at_number() const;
    /// Steps over `word` when it comes next.
    bool take(std::string_view word);
    /// Letters and quote signs that come next, as a unit is written; stepped over. May be empty.
    std::string_view take_unit();
    /// "12", "12.5", "12,5", "1/2", "12 1/2", "12-1/2", "12½": zero or more. A comma before three
    /// digits after a whole number that is not 0 is refused, since it may mean thousands.
    Result<double> take_number();

    /// The problem `what` at the place reached, with the text and a caret.
    [[nodiscard]] Problem problem_here(const std::string& what, const std::string& remedy) const;

  private:
    Result<double> take_decimal();
    /// A fraction after a whole number; leaves the place alone and gives 0 when none follows.
    Result<double> take_fraction();
    /// The digits that come next, stepped over.
    std::string_view take_digits();

    std::string_view text_;
    std::size_t at_ = 0;
};

}  // namespace wallwright::units
