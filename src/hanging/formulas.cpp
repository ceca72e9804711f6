#include "hanging/formulas.h"

#include "hanging/rail_lean.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::FixingKind;

/// Small pulls, such as those off the wall, are said to a hundredth.
std::string force_text(Newtons force, units::LengthUnit unit) {
    constexpr double kNewtonsPerPound = units::kKgPerPound * units::kStandardGravity;
    const bool pounds = unit == units::LengthUnit::inch;
    const double value = force.value / (pounds ? kNewtonsPerPound : 1);
    if (value >= 1)
        return format_force(force, unit);
    return fmt::format("{:.2f} {}", value, pounds ? "lbf" : "N");
}

/// Says numbers in the person's units and gathers formulas.
class Sums {
  public:
    explicit Sums(const Hung& hung)
        : hung_(hung), unit_(hung.project.unit), weight_(weight_of(hung.hanging.mass.high)) {}

    std::vector<Worked> all() {
        add_weight();
        if (hung_.hanging.cord)
            add_cord(*hung_.hanging.cord);
        if (first().kind == FixingKind::strip_pair)
            add_strips();
        else
            add_hooks();
        add_limits();
        return std::move(sums_);
    }

  private:
    [[nodiscard]] const Fixing& first() const { return hung_.hanging.fixings.front(); }
    [[nodiscard]] std::size_t count() const { return hung_.hanging.fixings.size(); }
    [[nodiscard]] std::string say(Newtons force) const { return force_text(force, unit_); }
    [[nodiscard]] std::string say(double mm) const { return units::format_length(mm, unit_); }
    [[nodiscard]] std::string say(Kilograms mass) const { return format_mass(mass, unit_); }
    void add(std::string about, std::string formula) {
        sums_.push_back({std::move(about), std::move(formula)});
    }

    void add_weight() {
        const Kilograms mass = hung_.hanging.mass.high;
        const std::string masses = unit_ == units::LengthUnit::inch
                                       ? say(mass)
                                       : fmt::format("{:.3f} kg x 9.81 m/s2", mass.value);
        add("weight, by its high side", fmt::format("W = m g = {} = {}", masses, say(weight_)));
    }

    void add_cord(const Cord& cord) {
        const bool two = hung_.hanger.type == wall::HangerType::cord_two_hooks;
        const std::string s = say(*hung_.hanger.ring_spacing);
        const std::string length = say(*hung_.hanger.cord_length);
        const std::string a = fmt::format("{:.1f} deg", cord.angle_deg);
        if (two) {
            const std::string h = say(*hung_.hanger.hook_spacing);
            add("the cord above the level: s between the rings, h between the hooks, L of cord",
                fmt::format("cos a = (s - h) / (L - h) = ({} - {}) / ({} - {}), a = {}", s, h,
                            length, h, a));
            add("from the rings up to the hooks",
                fmt::format("d = sqrt((L - h)^2 - (s - h)^2) / 2 = {}", say(cord.drop)));
        } else {
            add("the cord above the level: s between the rings, L of cord",
                fmt::format("cos a = s / L = {} / {}, a = {}", s, length, a));
            add("from the rings up to the hook",
                fmt::format("d = sqrt(L^2 - s^2) / 2 = {}", say(cord.drop)));
        }
        add("pull in the cord", fmt::format("T = W / (2 sin a) = {} / (2 x sin {}) = {}",
                                            say(weight_), a, say(cord.tension)));
        add("inward on each side of the frame",
            fmt::format("H = W / (2 tan a) = {} / (2 x tan {}) = {}", say(weight_), a,
                        say(cord.inward_pull)));
        if (two)
            add("on each hook, toward the other",
                fmt::format("S = T (1 - cos a) = {} x (1 - cos {}) = {}", say(cord.tension), a,
                            say(cord.hook_sideways)));
    }

    /// Off the wall, from the centre of gravity x from the wall and the fixings y above the foot.
    void add_pull(const char* about, Newtons pull) {
        const double up = first().at.y - first().cord - hung_.place.bottom();
        add(fmt::format("{}: x from the wall to the centre of gravity, y up from the lower edge",
                        about),
            fmt::format("F = W x / y = {} x {} / {} = {}", say(weight_), say(hung_.depth / 2),
                        say(up), say(pull)));
    }

    [[nodiscard]] Newtons off_wall() const {
        Newtons sum;
        for (const Fixing& fixing : hung_.hanging.fixings)
            sum = sum + fixing.off_wall;
        return sum;
    }

    void add_strips() {
        const auto most = std::ranges::max_element(
            hung_.hanging.fixings, {},
            [](const Fixing& one) { return std::hypot(one.down.value, one.sideways.value); });
        const Newtons along{std::hypot(most->down.value, most->sideways.value)};
        add("along the wall, on each pair",
            fmt::format("W / n = {} / {} = {}", say(weight_), count(),
                        say((1.0 / static_cast<double>(count())) * weight_)));
        if (count() % 2 == 1 && count() > 1)
            add("along the wall, on the pair that stands alone on its side",
                fmt::format("more than its share, since the pairs do not lie evenly: {}",
                            say(along)));
        add_pull("off the wall, on the top pairs together", off_wall());
        add("off the wall, on each top pair",
            fmt::format("F / {} = {}", off_wall() / first().off_wall < 1.5 ? 1 : 2,
                        say(first().off_wall)));
    }

    void add_hooks() {
        const bool rail = first().kind == FixingKind::rail_hook;
        const bool sideways = first().sideways.value != 0;
        const std::string each = count() == 1 ? "" : fmt::format(" / {}", count());
        if (count() > 1)
            add(rail ? "down, on each cord" : "down, on each",
                fmt::format("W{} = {}", each, say(first().down)));
        add_pull(rail ? "toward the wall, to hold it flat" : "off the wall, in all", off_wall());
        const char* w = count() == 1 ? "W^2" : "(W / 2)^2";
        const char* f = count() == 1 ? "F^2" : "(F / 2)^2";
        add(count() == 1 ? "on it in all" : "on each in all",
            fmt::format("R = sqrt({}{} + {}) = {}", w, sideways ? " + S^2" : "", f,
                        say(weight_of(first().load))));
    }

    void add_limits() {
        const Hanging& hanging = hung_.hanging;
        const auto most = std::ranges::max_element(
            hanging.fixings, {}, [](const Fixing& one) { return one.load / one.rated; });
        add("most that one of them bears, against what it may",
            fmt::format("{} of {} / {:g} = {}", say(most->load), say(most->rated), hanging.margin,
                        say(most->rated / hanging.margin)));
        if (hanging.cord_breaking_needed)
            add("strength at which the cord may break",
                fmt::format("{:g} times the weight, or the pull where that is more: {}",
                            hung_.project.style.cord_margin, say(*hanging.cord_breaking_needed)));
    }

    const Hung& hung_;
    units::LengthUnit unit_;
    Newtons weight_;
    std::vector<Worked> sums_;
};

/// Of the weight, the part on pairs below the top ones, and how many these are.
std::pair<Newtons, int> on_lower_pairs(const Hung& hung) {
    const std::vector<Fixing>& pairs = hung.hanging.fixings;
    std::pair<Newtons, int> lower;
    for (const Fixing& pair : pairs)
        if (pair.at.y < pairs.front().at.y)
            lower = {lower.first + pair.down, lower.second + 1};
    return lower;
}

std::string strip_remark(const Hung& hung) {
    const auto [down, count] = on_lower_pairs(hung);
    if (count == 0)
        return "There is no pair at the foot: a knock there swings the frame out and peels the top "
               "pairs.";
    return fmt::format(
        "The {} below the top {} {} of the weight and {} pressed, not pulled; {} the foot from "
        "swinging off the wall, and {} the pull at the top as it is.",
        count == 1 ? "pair" : "pairs", count == 1 ? "takes" : "take",
        force_text(down, hung.project.unit), count == 1 ? "is" : "are",
        count == 1 ? "it keeps" : "they keep", count == 1 ? "leaves" : "leave");
}

/// Each of two cords is one half of what one would be; the lean is the same.
std::string rail_remark(const Hung& hung) {
    const Fixing& hook = hung.hanging.fixings.front();
    const double drop = hung.hanging.cord ? hung.hanging.cord->drop : 0;
    const double tied = hook.at.y - hook.cord - drop - hung.place.bottom();
    const double cord = hook.cord + drop;
    const double out = lean_out({hung.depth / 2, tied, cord, hung.place.height()});
    const Newtons back = (out / cord) * weight_of(hung.hanging.mass.high);
    const bool two = hung.hanging.fixings.size() > 1;
    return fmt::format(
        "These are the forces of a piece held flat. It leans out until {}: where it is tied comes "
        "to rest about {} off the wall, and {} with {}. A hook that stands off the wall adds to "
        "that.",
        two ? "its cords slant enough" : "its cord slants enough",
        units::format_length(out, hung.project.unit),
        two ? "together they pull it back" : "the cord pulls it back",
        force_text(back, hung.project.unit));
}

/// With bumpers at the foot the piece tilts about its hooks, and its middle moves off the wall.
std::string bumper_remark(const Hung& hung) {
    constexpr double kBumper = 3.2;  // mm, 1/8 in: a framer's note on the air behind a frame
    const double up = hung.hanging.fixings.front().at.y - hung.place.bottom();
    const double off = hung.depth / 2 + kBumper * (up - hung.place.height() / 2) / up;
    const Newtons pull = (off / up) * weight_of(hung.hanging.mass.high);
    return fmt::format(
        "Bumpers {} thick at its lower corners tilt it a little and bring the pull off the wall to "
        "{}.",
        units::format_length(kBumper, hung.project.unit), force_text(pull, hung.project.unit));
}

}  // namespace

std::vector<Worked> formulas_of(const Hung& hung) {
    return Sums(hung).all();
}

std::vector<std::string> remarks_on(const Hung& hung) {
    std::vector<std::string> remarks;
    switch (hung.hanging.fixings.front().kind) {
        case FixingKind::strip_pair:
            remarks.push_back(strip_remark(hung));
            break;
        case FixingKind::rail_hook:
            remarks.push_back(rail_remark(hung));
            break;
        case FixingKind::nail_hook:
        case FixingKind::screw:
            remarks.push_back(bumper_remark(hung));
            break;
    }
    remarks.emplace_back(
        "Friction is left out, of the frame on the wall and of a cord on its hooks.");
    return remarks;
}

}  // namespace wallwright::hanging
