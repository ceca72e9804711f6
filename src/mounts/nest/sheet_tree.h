// A sheet cut up: every piece is a blank, free, or cut into pieces that lie side by side.
#pragma once

#include "geometry/rect.h"

#include <array>
#include <span>
#include <vector>

namespace wallwright::mounts {

/// 0: along x, cuts are upright; 1: along y.
using Axis = int;

/// mm along x and y.
using Extent = std::array<double, 2>;

/// Positions follow from the order of pieces alone, so that free pieces side by side are always
/// one.
class SheetTree {
  public:
    static constexpr int kNone = -1;
    static constexpr int kFree = -1;
    static constexpr int kCutUp = -2;
    static constexpr int kSpare = -3;

    struct Piece {
        Extent extent{};
        int holds = kFree;  ///< A blank's index, kFree, kCutUp, or kSpare: not in use.
        Axis axis = 0;      ///< Along which its parts lie.
        int parent = kNone;
        int first = kNone;  ///< Of its parts.
        int next = kNone;   ///< Of its parent's parts.
    };

    explicit SheetTree(geometry::Size size);

    /// Cuts `extent` from a corner of a free piece that holds it, along `first` first.
    void place(int piece, int blank, const Extent& extent, Axis first);
    /// Frees a piece with all it holds; appends its blanks.
    void remove(int piece, std::vector<int>& blanks);
    void clear(std::vector<int>& blanks) { remove(0, blanks); }

    [[nodiscard]] std::span<const int> free() const { return free_; }
    [[nodiscard]] std::span<const Piece> pieces() const { return pieces_; }
    [[nodiscard]] const Piece& piece(int index) const {
        return pieces_[static_cast<std::size_t>(index)];
    }
    /// mm2 of the whole sheet.
    [[nodiscard]] double area() const { return area_of(0); }
    [[nodiscard]] double area_of(int index) const {
        return piece(index).extent[0] * piece(index).extent[1];
    }
    [[nodiscard]] bool is_empty() const { return piece(0).holds == kFree; }

  private:
    Piece& at(int index) { return pieces_[static_cast<std::size_t>(index)]; }
    int add(int parent, const Extent& extent);
    int cut(int piece, Axis axis, double length);
    void release_parts(int piece, std::vector<int>& blanks);
    void release(int piece);
    void unlink(int piece);
    int free_beside(int piece) const;
    void join_free(int piece);
    void no_longer_free(int piece);

    std::vector<Piece> pieces_;  // the sheet is the first
    std::vector<int> free_;
    std::vector<int> spare_;
};

}  // namespace wallwright::mounts
