#include "buying/parts.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::buying {

namespace {

/// Frames that one would not tell apart in the shop, and for which pieces.
struct Alike {
    const wall::Frame* frame = nullptr;
    std::vector<std::string> pieces;
};

bool is_alike(const wall::Frame& a, const wall::Frame& b) {
    return geometry::is_same_size(a.outside, b.outside) && a.title == b.title &&
           geometry::is_same_length(a.depth, b.depth) &&
           geometry::is_same_length(a.moulding_width, b.moulding_width) &&
           a.moulding == b.moulding && a.glazing == b.glazing && a.colour == b.colour &&
           a.price == b.price;
}

std::vector<Alike> wished_for(const wall::Project& project) {
    std::vector<Alike> all;
    for (const wall::Piece& piece : project.pieces) {
        if (!piece.wished)
            continue;
        const wall::Frame& frame = wall::frame_of(project, piece);
        auto same = std::ranges::find_if(
            all, [&frame](const Alike& one) { return is_alike(*one.frame, frame); });
        if (same == all.end())
            same = all.insert(all.end(), {&frame, {}});
        same->pieces.push_back(wall::title_of(piece));
    }
    return all;
}

}  // namespace

Items frames_to_buy(const Job& job) {
    constexpr std::size_t kNamed = 4;
    Items items;
    for (const Alike& alike : wished_for(job.project)) {
        const wall::Frame& frame = *alike.frame;
        const units::LengthUnit unit = job.project.unit;
        const std::string size =
            fmt::format("{} over the moulding, {} deep", size_words(frame.outside, unit),
                        units::format_length(frame.depth, unit));
        Item item{Kind::frames,
                  frame.title.empty() ? fmt::format("Frame, {}", size)
                                      : fmt::format("{}, {}", frame.title, size),
                  counted(alike.pieces.size(), "frame", "frames"),
                  fmt::format("for {}", wall::listed(alike.pieces, kNamed))};
        if (frame.price > 0)
            item.price = static_cast<double>(alike.pieces.size()) * frame.price;
        item.later = true;
        items.push_back(std::move(item));
    }
    return items;
}

}  // namespace wallwright::buying
