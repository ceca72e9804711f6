// Remarks while they are gathered, and the words they share.
#pragma once

#include "mounts/design/remarks.h"
#include "mounts/design/rule_step.h"

#include <fmt/format.h>

#include <utility>

namespace wallwright::mounts {

class Remarks {
  public:
    explicit Remarks(units::LengthUnit unit) : unit_(unit) {}

    void add(Trouble trouble, wall::Severity severity, std::optional<double> measured,
             std::optional<double> wanted, std::string text);
    [[nodiscard]] std::string length(double mm) const { return units::format_length(mm, unit_); }
    [[nodiscard]] std::string size(geometry::Size size) const {
        return fmt::format("{} x {}", units::format_number(size.width, unit_), length(size.height));
    }
    [[nodiscard]] std::vector<Remark> all() && { return std::move(all_); }

  private:
    units::LengthUnit unit_;
    std::vector<Remark> all_;
};

/// Closed, outside the blank, on each other, or too near each other.
void on_windows(Remarks& out, const MountDesign& design);
/// Not covered, outside the blank, on each other, or cropped more than wanted.
void on_prints(Remarks& out, const MountDesign& design, const wall::Mount& mount);

}  // namespace wallwright::mounts
