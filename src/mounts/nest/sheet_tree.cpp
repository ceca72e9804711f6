#include "mounts/nest/sheet_tree.h"

#include <algorithm>

namespace wallwright::mounts {

SheetTree::SheetTree(geometry::Size size) {
    add(kNone, {size.width, size.height});
}

int SheetTree::add(int parent, const Extent& extent) {
    int index = static_cast<int>(pieces_.size());
    if (spare_.empty()) {
        pieces_.emplace_back();
    } else {
        index = spare_.back();
        spare_.pop_back();
    }
    at(index) = {.extent = extent, .parent = parent};
    if (parent != kNone) {
        at(index).next = at(parent).first;
        at(parent).first = index;
    }
    free_.push_back(index);
    return index;
}

// The part of `length` of a free piece; the rest of it stays free.
int SheetTree::cut(int piece, Axis axis, double length) {
    const auto along = static_cast<std::size_t>(axis);
    Extent off = at(piece).extent;
    Extent rest = off;
    off[along] = length;
    rest[along] -= length;
    if (rest[along] < geometry::kLengthEps)
        return piece;
    const int parent = at(piece).parent;
    if (parent != kNone && at(parent).axis == axis) {
        at(piece).extent = rest;
        return add(parent, off);
    }
    at(piece).holds = kCutUp;
    at(piece).axis = axis;
    no_longer_free(piece);
    add(piece, rest);
    return add(piece, off);
}

void SheetTree::place(int piece, int blank, const Extent& extent, Axis first) {
    const Axis second = 1 - first;
    const int strip = cut(piece, first, extent[static_cast<std::size_t>(first)]);
    const int cut_out = cut(strip, second, extent[static_cast<std::size_t>(second)]);
    at(cut_out).holds = blank;
    no_longer_free(cut_out);
}

void SheetTree::no_longer_free(int piece) {
    const auto found = std::find(free_.begin(), free_.end(), piece);
    *found = free_.back();
    free_.pop_back();
}

void SheetTree::release(int piece) {
    at(piece).holds = kSpare;
    spare_.push_back(piece);
}

void SheetTree::release_parts(int piece, std::vector<int>& blanks) {
    for (int part = at(piece).first; part != kNone; part = at(part).next) {
        if (at(part).holds == kCutUp)
            release_parts(part, blanks);
        else if (at(part).holds == kFree)
            no_longer_free(part);
        else
            blanks.push_back(at(part).holds);
        release(part);
    }
    at(piece).first = kNone;
}

void SheetTree::unlink(int piece) {
    int* link = &at(at(piece).parent).first;
    while (*link != piece)
        link = &at(*link).next;
    *link = at(piece).next;
}

int SheetTree::free_beside(int piece) const {
    int other = this->piece(this->piece(piece).parent).first;
    while (other != kNone && (other == piece || this->piece(other).holds != kFree))
        other = this->piece(other).next;
    return other;
}

// With the free piece beside it; and where nothing else is beside it, it is all that its parent is.
void SheetTree::join_free(int piece) {
    while (at(piece).parent != kNone) {
        const int parent = at(piece).parent;
        const auto along = static_cast<std::size_t>(at(parent).axis);
        if (const int other = free_beside(piece); other != kNone) {
            at(piece).extent[along] += at(other).extent[along];
            unlink(other);
            no_longer_free(other);
            release(other);
        }
        if (at(parent).first != piece || at(piece).next != kNone)
            return;
        no_longer_free(piece);
        release(piece);
        at(parent).first = kNone;
        at(parent).holds = kFree;
        free_.push_back(parent);
        piece = parent;
    }
}

void SheetTree::remove(int piece, std::vector<int>& blanks) {
    if (at(piece).holds == kFree)
        return;
    if (at(piece).holds == kCutUp)
        release_parts(piece, blanks);
    else
        blanks.push_back(at(piece).holds);
    at(piece).holds = kFree;
    free_.push_back(piece);
    join_free(piece);
}

}  // namespace wallwright::mounts
