#include "hanging/hanger_fit.h"

#include "base/contract.h"
#include "hanging/cord.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::hanging {

namespace {

using geometry::Size;
using wall::Hanger;
using wall::HangerType;

constexpr double kFlattestAngle = 10;  ///< degrees

/// Finds what is wrong with one hanger; lengths are said in the person's unit.
class Fitting {
  public:
    Fitting(const Hanger& hanger, Size outside, units::LengthUnit unit)
        : hanger_(hanger), outside_(outside), unit_(unit) {}

    std::vector<Misfit> all() {
        check_drop();
        if (hanger_.type != HangerType::sawtooth)
            check_rings();
        if (hanger_.type == HangerType::cord_two_hooks)
            check_hooks();
        const bool corded =
            hanger_.type == HangerType::cord_one_hook || hanger_.type == HangerType::cord_two_hooks;
        if (corded && wrong_.empty())
            check_cord();
        return std::move(wrong_);
    }

  private:
    [[nodiscard]] std::string say(double mm) const { return units::format_length(mm, unit_); }

    void stop(double measured, double wanted, std::string what, std::string remedy) {
        wrong_.push_back(
            {wall::Severity::stop, measured, wanted, "mm", std::move(what), std::move(remedy)});
    }

    void check_drop() {
        const double drop = *hanger_.drop;
        const double middle = outside_.height / 2;
        if (drop <= 0)
            stop(drop, 0, fmt::format("the hanger sits {} below the frame's top", say(drop)),
                 "measure again from the top edge down to where it hangs");
        if (drop >= middle)
            stop(drop, middle,
                 fmt::format("the hanger sits {} below the top, and from the middle at {} down the "
                             "piece tips over",
                             say(drop), say(middle)),
                 "fix it in the upper half");
    }

    void check_rings() {
        const double spacing = *hanger_.ring_spacing;
        const char* rings = hanger_.type == HangerType::keyholes ? "keyholes" : "rings";
        if (spacing <= 0)
            stop(spacing, 0, fmt::format("its {} are {} apart", rings, say(spacing)),
                 "measure between them again");
        if (spacing >= outside_.width)
            stop(spacing, outside_.width,
                 fmt::format("{} {} apart do not fit on a frame {} wide", rings, say(spacing),
                             say(outside_.width)),
                 "measure between them again");
    }

    void check_hooks() {
        const double spacing = *hanger_.hook_spacing;
        if (spacing <= 0 || spacing >= *hanger_.ring_spacing)
            stop(spacing, *hanger_.ring_spacing,
                 fmt::format("two hooks {} apart do not go under a cord with its rings {} apart",
                             say(spacing), say(*hanger_.ring_spacing)),
                 "set the hooks closer together");
    }

    void check_cord() {
        const double length = *hanger_.cord_length;
        if (length - *hanger_.ring_spacing <= geometry::kLengthEps) {
            stop(length, *hanger_.ring_spacing,
                 fmt::format("a cord of {} does not reach over a hook between rings {} apart",
                             say(length), say(*hanger_.ring_spacing)),
                 "take a longer cord");
            return;
        }
        const Cord cord = taut();
        const double above = cord.drop - *hanger_.drop;
        if (above >= 0)
            stop(cord.drop, *hanger_.drop,
                 fmt::format("a cord of {} reaches {} above its rings, which sit {} below the top, "
                             "so that the hook would show above the frame",
                             say(length), say(cord.drop), say(*hanger_.drop)),
                 "shorten the cord");
        else if (cord.angle_deg < kFlattestAngle)
            wrong_.push_back(
                {wall::Severity::mind, cord.angle_deg, kFlattestAngle, "deg",
                 fmt::format(
                     "the cord lies so flat ({:.1f} degrees) that it pulls each ring with {:.1f} "
                     "times the weight of the piece",
                     cord.angle_deg, cord.tension.value),
                 "take a longer cord, set the rings lower or hang it from the rings on two hooks"});
    }

    /// Under a weight of 1 N, so that its tension is a ratio to the weight.
    [[nodiscard]] Cord taut() const {
        const units::Newtons one{1};
        const Result<Cord> cord =
            hanger_.type == HangerType::cord_one_hook
                ? over_one_hook(*hanger_.ring_spacing, *hanger_.cord_length, one)
                : over_two_hooks(*hanger_.ring_spacing, *hanger_.hook_spacing, *hanger_.cord_length,
                                 one);
        WW_EXPECT(cord.has_value(), "a cord that passed its checks has its statics");
        return *cord;
    }

    const Hanger& hanger_;
    Size outside_;
    units::LengthUnit unit_;
    std::vector<Misfit> wrong_;
};

}  // namespace

std::string to_text(const Misfit& misfit) {
    return misfit.what + "; " + misfit.remedy;
}

std::vector<Misfit> misfits(const Hanger& complete_hanger, Size outside, units::LengthUnit unit) {
    if (complete_hanger.type == HangerType::strips)
        return {};
    return Fitting(complete_hanger, outside, unit).all();
}

}  // namespace wallwright::hanging
