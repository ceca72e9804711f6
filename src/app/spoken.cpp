#include "app/widgets.h"

#include <algorithm>
#include <utility>

namespace wallwright::app {

std::string spoken(std::string_view name) {
    static constexpr std::pair<std::string_view, std::string_view> kOwnWords[] = {
        {"bs_7671", "BS 7671"},
        {"din_18015_3", "DIN 18015-3"},
        {"cord_one_hook", "cord on one hook"},
        {"cord_two_hooks", "cord on two hooks"},
    };
    for (const auto& [written, words] : kOwnWords)
        if (written == name)
            return std::string(words);
    std::string words(name);
    std::ranges::replace(words, '_', ' ');
    return words;
}

std::string capital(std::string words) {
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

}  // namespace wallwright::app
