#include "arrange/b_star_tree.h"

#include "base/contract.h"

#include <limits>
#include <utility>

namespace wallwright::arrange {

namespace {

constexpr std::size_t kMostBlocks = 65000;
// Sums of the same lengths in another order are to count as equal.
constexpr double kRounding = 1e-7;

}  // namespace

BStarTree::BStarTree(std::span<const Block> blocks, Random& random)
    : nodes_(blocks.size()), steps_(blocks.size() + 2), later_(blocks.size()) {
    WW_EXPECT(!blocks.empty() && blocks.size() <= kMostBlocks, "a tree holds 1 to 65000 blocks");
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        sizes_.push_back(blocks[i].size);
        sizes_.push_back(blocks[i].size.turned());
        nodes_[i].block = static_cast<Index>(i);
        if (blocks[i].may_turn && blocks[i].size.width != blocks[i].size.height)
            may_turn_.push_back(static_cast<Index>(i));
    }
    for (std::size_t i = nodes_.size(); i-- > 1;)
        std::swap(nodes_[i].block, nodes_[random.below(i + 1)].block);
    for (std::size_t i = 1; i < nodes_.size(); ++i)
        insert(static_cast<Index>(i), static_cast<Index>(random.below(i)), random);
    for (Node& node : nodes_)
        node.turned = blocks[node.block].may_turn && random.below(2) == 0;
    keep();
}

void BStarTree::keep() {
    kept_ = nodes_;
    kept_root_ = root_;
}

void BStarTree::take_back() {
    nodes_ = kept_;
    root_ = kept_root_;
}

geometry::Size BStarTree::size_of(const Node& node) const {
    return sizes_[2U * node.block + (node.turned ? 1U : 0U)];
}

// Walks along the upper edge from the node's x; the stretches it covers leave the edge for its own.
void BStarTree::place(Index node) {
    const Node& n = nodes_[node];
    const geometry::Size size = size_of(n);
    const auto left_wall = static_cast<Index>(nodes_.size());
    Index before = left_wall;
    double x = 0;
    if (n.parent != kNone) {
        const Step& parent = steps_[n.parent];
        const bool beside = nodes_[n.parent].left == node;
        before = beside ? n.parent : parent.before;
        x = beside ? parent.end : parent.x;
    }
    const double end = x + size.width;
    double from = x;
    double bottom = 0;
    Index after = steps_[before].next;
    for (; steps_[after].end <= end + kRounding; after = steps_[after].next) {
        bottom = std::max(bottom, steps_[after].top);
        from = steps_[after].end;
    }
    if (from < end - kRounding)
        bottom = std::max(bottom, steps_[after].top);
    steps_[node] = {x, end, bottom + size.height, before, after};
    steps_[before].next = node;
    steps_[after].before = node;
}

double BStarTree::pack(const PackingGoal& goal, double limit) {
    const auto left_wall = static_cast<Index>(nodes_.size());
    const auto floor = static_cast<Index>(nodes_.size() + 1);
    steps_[left_wall] = {0, 0, 0, left_wall, floor};
    steps_[floor] = {0, std::numeric_limits<double>::infinity(), 0, left_wall, floor};
    box_ = {};
    std::size_t waiting = 0;
    later_[waiting++] = root_;
    while (waiting > 0) {
        for (Index node = later_[--waiting]; node != kNone; node = nodes_[node].left) {
            place(node);
            if (nodes_[node].right != kNone)
                later_[waiting++] = nodes_[node].right;
            box_ = {std::max(box_.width, steps_[node].end),
                    std::max(box_.height, steps_[node].top)};
        }
        const double least = least_cost_of(goal, box_);
        if (least > limit)
            return least;
    }
    return cost_of(goal, box_);
}

Packing BStarTree::packing(const PackingGoal& goal) const {
    Packing result;
    result.at.resize(nodes_.size());
    result.turned.resize(nodes_.size());
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        const double height = size_of(nodes_[i]).height;
        result.at[nodes_[i].block] = {steps_[i].x, steps_[i].top - height};
        result.turned[nodes_[i].block] = nodes_[i].turned;
    }
    result.box = box_;
    result.cost = cost_of(goal, box_);
    return result;
}

void BStarTree::change(Random& random) {
    keep();
    const auto count = static_cast<std::uint64_t>(nodes_.size());
    const std::uint64_t kind = random.below(8);
    const auto node = static_cast<Index>(random.below(count));
    if (kind < 2 && !may_turn_.empty()) {
        const Index block = may_turn_[random.below(may_turn_.size())];
        for (Node& n : nodes_)
            n.turned = n.turned != (n.block == block);
    } else if (kind < 4) {
        swap(node, static_cast<Index>(random.below(count)));
    } else {
        move(node, random);
    }
}

void BStarTree::swap(Index a, Index b) {
    std::swap(nodes_[a].block, nodes_[b].block);
    std::swap(nodes_[a].turned, nodes_[b].turned);
}

void BStarTree::move(Index node, Random& random) {
    if (nodes_.size() < 2)
        return;
    while (nodes_[node].left != kNone && nodes_[node].right != kNone) {
        const Index child = random.below(2) == 0 ? nodes_[node].left : nodes_[node].right;
        swap(node, child);
        node = child;
    }
    unlink(node);
    auto parent = static_cast<Index>(random.below(nodes_.size() - 1));
    if (parent >= node)
        ++parent;
    insert(node, parent, random);
}

void BStarTree::replace_child(Index parent, Index child, Index by) {
    if (parent == kNone)
        root_ = by;
    else if (nodes_[parent].left == child)
        nodes_[parent].left = by;
    else
        nodes_[parent].right = by;
    if (by != kNone)
        nodes_[by].parent = parent;
}

void BStarTree::unlink(Index node) {
    Node& n = nodes_[node];
    replace_child(n.parent, node, n.left != kNone ? n.left : n.right);
    n.parent = n.left = n.right = kNone;
}

void BStarTree::insert(Index node, Index parent, Random& random) {
    const std::uint64_t sides = random.below(4);
    Index& link = (sides & 1U) != 0 ? nodes_[parent].left : nodes_[parent].right;
    const Index child = std::exchange(link, node);
    nodes_[node].parent = parent;
    ((sides & 2U) != 0 ? nodes_[node].left : nodes_[node].right) = child;
    if (child != kNone)
        nodes_[child].parent = node;
}

}  // namespace wallwright::arrange
