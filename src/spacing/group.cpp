#include "spacing/group.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

namespace wallwright::spacing {

namespace {

using geometry::kLengthEps;
using wall::Placed;

/// Which pieces hang together: each starts alone, and joining two joins all that hang together with
/// either.
class Clusters {
  public:
    explicit Clusters(std::size_t count) : parent_(count) {
        std::iota(parent_.begin(), parent_.end(), std::size_t{0});
    }

    std::size_t head_of(std::size_t member) {
        while (parent_[member] != member) {
            parent_[member] = parent_[parent_[member]];
            member = parent_[member];
        }
        return member;
    }

    /// The earlier head stays head, so that the result does not depend on the order of joining.
    void join(std::size_t a, std::size_t b) {
        const std::size_t head_a = head_of(a);
        const std::size_t head_b = head_of(b);
        parent_[std::max(head_a, head_b)] = std::min(head_a, head_b);
    }

  private:
    std::vector<std::size_t> parent_;
};

bool touch_or_overlap(const Placed& a, const Placed& b) {
    return geometry::overlap_x(a.place, b.place) >= -kLengthEps &&
           geometry::overlap_y(a.place, b.place) >= -kLengthEps;
}

void join_neighbours(std::span<const Placed> pieces, const std::vector<Gap>& gaps,
                     Clusters& clusters) {
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        for (std::size_t j = i + 1; j < pieces.size(); ++j) {
            if (touch_or_overlap(pieces[i], pieces[j])) {
                clusters.join(i, j);
            }
        }
    }
    std::map<wall::PieceId, std::size_t> index;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        index.emplace(pieces[i].id, i);
    }
    for (const Gap& gap : gaps) {
        clusters.join(index.at(gap.first), index.at(gap.second));
    }
}

auto left_to_right(const Group& group) {
    return std::make_tuple(group.bounds.left(), group.bounds.bottom());
}

}  // namespace

double Group::gap_min() const {
    const auto least = std::ranges::min_element(gaps, {}, &Gap::size);
    return least == gaps.end() ? 0 : least->size;
}

double Group::gap_max() const {
    const auto most = std::ranges::max_element(gaps, {}, &Gap::size);
    return most == gaps.end() ? 0 : most->size;
}

double group_reach(double wanted_gap) {
    constexpr double kLeastReach = 120;
    return std::max(2 * wanted_gap, kLeastReach);
}

std::vector<Group> find_groups(std::span<const Placed> pieces, double reach) {
    const std::vector<Gap> gaps = facing_gaps(pieces, reach);
    Clusters clusters(pieces.size());
    join_neighbours(pieces, gaps, clusters);

    std::map<std::size_t, Group> by_head;
    std::map<wall::PieceId, std::size_t> head_of_piece;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const std::size_t head = clusters.head_of(i);
        Group& group = by_head[head];
        group.bounds =
            group.pieces.empty() ? pieces[i].place : geometry::hull(group.bounds, pieces[i].place);
        group.pieces.push_back(pieces[i].id);
        head_of_piece.emplace(pieces[i].id, head);
    }
    for (const Gap& gap : gaps) {
        by_head.at(head_of_piece.at(gap.first)).gaps.push_back(gap);
    }

    std::vector<Group> groups;
    for (auto& [head, group] : by_head) {
        groups.push_back(std::move(group));
    }
    std::ranges::stable_sort(groups, {}, left_to_right);
    return groups;
}

}  // namespace wallwright::spacing
