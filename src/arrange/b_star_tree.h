// How blocks lean on each other, as a binary tree that is quick to change and to pack.
#pragma once

#include "arrange/packing.h"

#include <cstdint>
#include <span>
#include <vector>

namespace wallwright::arrange {

/// A B*-tree (Chang, Chang, Wu, Wu, B*-trees: a new representation for non-slicing floorplans, DAC
/// 2000): a left child stands right of its parent and touches it, a right child at its parent's x
/// and above it; each as low as those before it let it. Every packing that is pushed to the left
/// and down is one of these, so the best is.
class BStarTree {
  public:
    /// A random tree. At most 65000 blocks.
    BStarTree(std::span<const Block> blocks, Random& random);

    /// The cost of the packing; when it is more than `limit`, any number above that.
    double pack(const PackingGoal& goal, double limit);
    /// The packing last made in full.
    [[nodiscard]] Packing packing(const PackingGoal& goal) const;

    /// Turns a block, swaps two or takes one out and puts it elsewhere.
    void change(Random& random);
    /// Back to the tree before the last change.
    void take_back();

  private:
    using Index = std::uint16_t;
    static constexpr Index kNone = 0xFFFF;

    struct Node {
        Index parent = kNone;
        Index left = kNone;
        Index right = kNone;
        Index block = 0;
        bool turned = false;
    };
    /// A stretch of the upper edge of what is placed, from where the one before it ends; and the
    /// block of that node, which has made it.
    struct Step {
        double x = 0;
        double end = 0;
        double top = 0;
        Index before = 0;
        Index next = 0;
    };

    void keep();
    [[nodiscard]] geometry::Size size_of(const Node& node) const;
    void place(Index node);
    void swap(Index a, Index b);
    void move(Index node, Random& random);
    /// Takes a node with at most one child out of the tree.
    void unlink(Index node);
    void insert(Index node, Index parent, Random& random);
    void replace_child(Index parent, Index child, Index by);

    std::vector<geometry::Size> sizes_;  ///< Two a block, the second turned.
    std::vector<Index> may_turn_;        ///< Blocks.
    std::vector<Node> nodes_;
    std::vector<Node> kept_;
    Index root_ = 0;
    Index kept_root_ = 0;
    std::vector<Step> steps_;   ///< One a node, then the wall left of all and the floor.
    std::vector<Index> later_;  ///< Right children still to be placed.
    geometry::Size box_;
};

}  // namespace wallwright::arrange
