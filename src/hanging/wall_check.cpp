#include "hanging/wall_check.h"

#include <fmt/format.h>

namespace wallwright::hanging {

namespace {

using wall::Core;
using wall::Severity;

/// "masonry or concrete": what it is made for.
std::string walls_of(const wall::FixingType& type) {
    std::string words;
    for (std::size_t i = 0; i < type.cores.size(); ++i) {
        const bool last = i + 1 == type.cores.size();
        words += i == 0 ? "" : last ? " or " : ", ";
        words += wall::name_of(type.cores[i]);
    }
    return words;
}

std::string core_words(const Job& job, const wall::FixingType& type) {
    return fmt::format(
        "its fixing ({}) is made for {}, and this wall is of {}; take one that is made for it",
        type.title, walls_of(type), name_of(core_behind(job.project.room)));
}

std::string stud_words(const Job& job, const wall::FixingType& type) {
    const char* why = job.project.room.studs
                          ? "it does not fall on one; move the piece or take another fixing"
                          : "nobody has said where the studs are; find them or take another fixing";
    return fmt::format("its fixing ({}) holds only in a stud, and {}", type.title, why);
}

std::string rail_words(const Job& job, const wall::FixingType& type) {
    const std::optional<double>& rail = job.project.room.rail;
    if (!rail)
        return fmt::format(
            "its fixing ({}) hangs on a picture rail, and none is known on this "
            "wall; say how high it is or take another fixing",
            type.title);
    const units::LengthUnit unit = job.project.unit;
    return fmt::format(
        "its fixing ({}) hangs on the picture rail {} up, below its top at {}; hang "
        "it lower or take another fixing",
        type.title, units::format_length(*rail, unit), units::format_length(job.place.top(), unit));
}

std::string words_for(const Job& job, const Offer& offer) {
    const wall::FixingType& type = *offer.type;
    switch (offer.unfit) {
        case Unfit::no:
            return "";
        case Unfit::core:
            return core_words(job, type);
        case Unfit::stud:
            return stud_words(job, type);
        case Unfit::hollow:
            return fmt::format(
                "its fixing ({}) opens behind the board, and there is a stud; take "
                "a screw into the stud, or move the piece",
                type.title);
        case Unfit::rail:
            return rail_words(job, type);
    }
    return "";
}

}  // namespace

void check_wall(const Job& job, const Offer& offer, std::vector<wall::Finding>& findings) {
    const wall::FixingType& type = *offer.type;
    const wall::Room& room = job.project.room;
    if (const std::string words = words_for(job, offer); !words.empty())
        findings.push_back(about(job, kFixingSuitsWall, Severity::stop, words));
    else if (!type.cores.empty() && core_behind(room) == Core::unknown)
        findings.push_back(about(
            job, kFixingSuitsWall, Severity::note,
            fmt::format("its fixing ({}) is made for {}, and nobody has said what this wall is; "
                        "find out before drilling",
                        type.title, walls_of(type))));
}

}  // namespace wallwright::hanging
