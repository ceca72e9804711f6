#include "app/panels/usual_size_row.h"

namespace wallwright::app {

std::optional<wall::Size> usual_size_row(Ui& ui, const char* name,
                                         const std::vector<wall::NamedSize>& sizes,
                                         wall::Size now) {
    std::vector<std::string> words{"as typed"};
    int chosen = 0;
    for (const wall::NamedSize& named : sizes) {
        // "a4" is a sheet's name in capitals; the others are measures already.
        words.push_back(capital(named.name));
        if (named.size == now && chosen == 0)
            chosen = static_cast<int>(words.size()) - 1;
    }
    const auto picked = choice_row(ui, name, "Usual size", chosen, words,
                                   "Sizes that frames and sheets are sold in, upright.");
    if (!picked || *picked == 0)
        return std::nullopt;
    return sizes[static_cast<std::size_t>(*picked) - 1].size;
}

}  // namespace wallwright::app
