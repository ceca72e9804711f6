#include "hanging/capacity.h"

#include "hanging/nails.h"
#include "hanging/studs.h"

#include <algorithm>

namespace wallwright::hanging {

namespace {

using wall::Core;
using wall::FixingType;
using wall::Room;

/// mm that a nail goes through before it meets a stud: plaster board of 12.5 mm (usual over studs
/// 600 mm apart: a rule-of-thumb page on stud sizing), lath with its plaster (our choice).
constexpr double kBoard = 12.5;
constexpr double kLath = 25;
/// mm that it must then go into the wood to count.
constexpr double kLeastInStud = 10;

bool is_made_for(const FixingType& type, Core core) {
    return std::ranges::find(type.cores, core) != type.cores.end();
}

/// mm of each nail that go into wood, 0 where they do not reach any.
double depth_in_wood(const wall::Nails& nails, Core core) {
    if (core == Core::wood)
        return nails.length;
    const double depth = nails.length - (core == Core::lath ? kLath : kBoard);
    return depth >= kLeastInStud ? depth : 0;
}

/// True when it goes into wood there.
bool meets_wood(const Room& room, const FixingType& type, Core core, double across) {
    if (core == Core::wood)
        return true;
    if (!is_hollow(core) || !room.studs || !on_stud(*room.studs, across))
        return false;
    return !type.nails || depth_in_wood(*type.nails, core) > 0;
}

Unfit unfit_of(const FixingType& type, Core core, bool in_wood) {
    if (type.in_stud)
        return in_wood ? Unfit::no : Unfit::stud;
    if (in_wood && only_hollow(type))
        return core == Core::wood ? Unfit::core : Unfit::hollow;
    const bool named = type.cores.empty() || core == Core::unknown || is_made_for(type, core);
    return named ? Unfit::no : Unfit::core;
}

}  // namespace

Core core_behind(const Room& room) {
    const Core core = core_of(room);
    return core == Core::unknown && room.studs ? Core::plasterboard : core;
}

bool only_hollow(const FixingType& type) {
    return !type.in_stud && !type.cores.empty() &&
           std::ranges::all_of(type.cores, [](Core core) { return is_hollow(core); });
}

Capacity capacity_at(const Room& room, const wall::HangingStyle& style, const FixingType& type,
                     double across) {
    const Core core = core_behind(room);
    Capacity capacity;
    capacity.rated = type.rated;
    if (!pierces(type.kind)) {
        if (type.kind == wall::FixingKind::strip_pair)
            capacity.unfit = unfit_of(type, core, false);
        return capacity;
    }
    capacity.on_stud = meets_wood(room, type, core, across);
    capacity.unfit = unfit_of(type, core, capacity.on_stud);
    if (is_hollow(core) && !capacity.on_stud && !is_made_for(type, core))
        capacity.rated = style.weak_wall_share * type.rated;
    if (capacity.on_stud && type.nails)
        capacity.nails_hold =
            type.nails->count *
            nail_withdrawal(kStudGravity, type.nails->diameter, depth_in_wood(*type.nails, core));
    return capacity;
}

}  // namespace wallwright::hanging
