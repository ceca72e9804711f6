// Room for a value a piece, taken from the stack for walls of the usual size: measures are asked
// too often to ask the heap.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace wallwright::arrange {

template <class T, std::size_t kUsual>
class Scratch {
  public:
    explicit Scratch(std::size_t count) : many_(count > kUsual ? count : 0), count_(count) {}

    [[nodiscard]] std::span<T> all() {
        return count_ > kUsual ? std::span<T>(many_) : std::span<T>(few_).first(count_);
    }

  private:
    std::array<T, kUsual> few_{};
    std::vector<T> many_;
    std::size_t count_;
};

}  // namespace wallwright::arrange
