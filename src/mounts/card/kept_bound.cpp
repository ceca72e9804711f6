#include "mounts/card/kept_bound.h"

#include "mounts/nest/bounds.h"

#include <algorithm>

namespace wallwright::mounts {

namespace {

using geometry::kLengthEps;

/// From left to right.
std::vector<double> edges_across(const OnSheet& whole, std::span<const PlacedBlank> kept) {
    std::vector<double> edges{whole.left, whole.left + whole.size.width};
    for (const PlacedBlank& one : kept) {
        edges.push_back(one.place.left);
        edges.push_back(one.place.left + one.place.size.width);
    }
    std::sort(edges.begin(), edges.end());
    return edges;
}

/// The gaps above, between and below what reaches into a strip as high as the whole.
void add_gaps(std::vector<OnSheet>& parts, const OnSheet& strip,
              std::span<const PlacedBlank> kept) {
    std::vector<OnSheet> inside;
    for (const PlacedBlank& one : kept)
        if (overlap(one.place, strip))
            inside.push_back(one.place);
    std::sort(inside.begin(), inside.end(),
              [](const OnSheet& a, const OnSheet& b) { return a.top < b.top; });
    double from = strip.top;
    const auto add_to = [&](double to) {
        if (to - from > kLengthEps)
            parts.push_back({strip.left, from, {strip.size.width, to - from}});
    };
    for (const OnSheet& one : inside) {
        add_to(one.top);
        from = std::max(from, one.top + one.size.height);
    }
    add_to(strip.top + strip.size.height);
}

}  // namespace

std::vector<OnSheet> empty_parts(const OnSheet& whole, std::span<const PlacedBlank> kept) {
    const std::vector<double> edges = edges_across(whole, kept);
    std::vector<OnSheet> parts;
    for (std::size_t i = 0; i < edges.size(); ++i)
        for (std::size_t j = i + 1; j < edges.size(); ++j)
            if (edges[j] - edges[i] > kLengthEps)
                add_gaps(parts, {edges[i], whole.top, {edges[j] - edges[i], whole.size.height}},
                         kept);
    return parts;
}

std::size_t kept_bound(const NestTask& task, const std::vector<KeptSheet>& kept,
                       const RestOfTask& rest) {
    NestTask beside = rest.task;
    beside.sheets.resize(task.sheets.size());
    for (const KeptSheet& sheet : kept)
        for (const OnSheet& part :
             empty_parts(inside_margin(task.sheets[sheet.kind]), sheet.placed))
            beside.sheets.push_back({.id = "part", .size = part.size, .taken = true});
    return kept.size() + sheet_bound(stock_of(beside));
}

}  // namespace wallwright::mounts
