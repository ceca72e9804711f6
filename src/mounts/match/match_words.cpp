#include "mounts/match/match_words.h"

#include "mounts/match/shop_name.h"
#include "units/length.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

namespace wallwright::mounts {

namespace {

using wall::PieceId;
using wall::PrintId;
using wall::Project;

std::string length_text(const Project& project, double mm) {
    return units::format_length(mm, project.unit);
}

std::string size_text(const Project& project, geometry::Size size) {
    return fmt::format("{} x {}", units::format_number(size.width, project.unit),
                       length_text(project, size.height));
}

/// The frame's own title; where it has none, its piece's.
std::string frame_title(const Project& project, const PieceId& id) {
    const wall::Piece* piece = find(project, id);
    if (piece == nullptr)
        return id.text;
    const wall::Frame& frame = frame_of(project, *piece);
    return frame.title.empty() ? title_of(*piece) : frame.title;
}

std::string takes_text(const Project& project, const PieceId& id) {
    const wall::Piece* piece = find(project, id);
    return piece == nullptr
               ? std::string{}
               : size_text(project, blank_size(as_hung(frame_of(project, *piece), piece->turned)));
}

std::string titles(const Project& project, const std::vector<PrintId>& prints) {
    std::vector<std::string> all;
    for (const PrintId& print : prints)
        all.push_back(title_of(project, print));
    return wall::listed(all);
}

std::string flaw_text(const Project& project, const Fitting& fitting, const FlawCost& one) {
    const std::string length = length_text(project, one.measured);
    switch (one.flaw) {
        case Flaw::uneven:
            return fmt::format("{} {} at the sides than above", length,
                               fitting.seen.left > fitting.seen.top ? "wider" : "narrower");
        case Flaw::thin:
            return fmt::format("{} thinner than wanted", length);
        case Flaw::crop:
            return fmt::format("{} more of the picture covered on a side than usual", length);
        case Flaw::wide:
            return fmt::format("{} wider than such a picture needs", length);
        case Flaw::colour:
            break;
    }
    return {};
}

/// What the borders are and what is wrong with them; colour shows in its cost alone.
std::string borders_text(const Project& project, const Fitting& fitting) {
    std::string text =
        fmt::format("with borders of {} at the sides, {} above and {} below",
                    length_text(project, fitting.seen.left), length_text(project, fitting.seen.top),
                    length_text(project, fitting.seen.bottom));
    for (const FlawCost& one : fitting.flaws)
        if (one.cost > 0 && one.flaw != Flaw::colour)
            text += fmt::format("; {}", flaw_text(project, fitting, one));
    return text;
}

}  // namespace

std::string points_text(Cost cost) {
    const double points = static_cast<double>(cost) / 100;
    return fmt::format("{} {}", points, std::abs(cost) == 100 ? "point" : "points");
}

std::string pair_text(const Project& project, const Pair& pair) {
    const std::string print = title_of(project, pair.print);
    const std::string frame = frame_title(project, pair.piece);
    if (!pair.fitting)
        return fmt::format(
            "{} is kept in the frame {}, which takes {}, and does not fit; set it free or crop it.",
            print, frame, takes_text(project, pair.piece));
    const wall::Piece* piece = find(project, pair.piece);
    const bool turns = piece != nullptr && pair.fitting->turned != piece->turned;
    return fmt::format("{} {} the frame {}{}, {}.", print, pair.moves ? "goes into" : "stays in",
                       frame, turns ? " turned a quarter" : "",
                       pair.fitting->mounted ? borders_text(project, *pair.fitting)
                                             : "which it fills without a mount");
}

std::string alternative_text(const Project& project, const PrintId& print,
                             const Alternative& alternative, Cost total_now) {
    const std::string frame = frame_title(project, alternative.piece);
    const Cost more = alternative.total - total_now;
    const std::string change =
        more == 0 ? "as much as now"
                  : fmt::format("{} {}", points_text(std::abs(more)), more < 0 ? "less" : "more");
    std::string text =
        fmt::format("With {} in the frame {} all pairs would cost {}, {}", title_of(project, print),
                    frame, points_text(alternative.total), change);
    if (!alternative.left.empty())
        text += fmt::format(", and {} would have no frame", titles(project, alternative.left));
    return text + ".";
}

std::string left_text(const Project& project, const LeftPrint& left) {
    const wall::Print* print = find(project, left.print);
    const std::string size = print == nullptr ? "" : size_text(project, print->size);
    return fmt::format("{}, {}, is left over: {}.", title_of(project, left.print), size,
                       left.fits_none ? "no frame here suits it"
                                      : "every frame that suits it holds another print");
}

std::string left_text(const Project& project, const LeftPiece& left) {
    return fmt::format("The frame {}, which takes {}, stays empty.",
                       frame_title(project, left.piece), takes_text(project, left.piece));
}

std::string one_more_text(const Project& project, const OneMore& one) {
    std::string text =
        fmt::format("One more frame, {}, would take {}{}", shop_name(one.size_name),
                    title_of(project, one.print), one.mounted ? "" : " without a mount");
    if (one.framed.empty())
        return fmt::format("{} and save {}.", text, points_text(one.saved));
    if (one.framed != std::vector{one.print})
        text += fmt::format(", so that {} {} a frame too", titles(project, one.framed),
                            one.framed.size() == 1 ? "has" : "have");
    return text + ".";
}

}  // namespace wallwright::mounts
