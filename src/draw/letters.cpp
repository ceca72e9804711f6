#include "draw/letters.h"

namespace wallwright::draw {

std::string letter(std::size_t index) {
    constexpr std::size_t kLetters = 26;
    const std::string last(1, static_cast<char>('A' + index % kLetters));
    return index < kLetters ? last : letter(index / kLetters - 1) + last;
}

std::string letter_of(const wall::Project& project, const wall::PieceId& id) {
    for (std::size_t i = 0; i < project.pieces.size(); ++i)
        if (project.pieces[i].id == id)
            return letter(i);
    return "";
}

}  // namespace wallwright::draw
