#include "app/panels/material_row.h"

namespace wallwright::app {

std::optional<wall::MaterialId> material_row(Ui& ui, const desk::Session& session, const char* name,
                                             const char* label, const wall::MaterialId& now,
                                             wall::MaterialUse use) {
    const std::vector<wall::Material> all = session.catalogue().materials;
    std::vector<std::string> words;
    std::vector<wall::MaterialId> ids;
    int chosen = -1;
    for (const wall::Material& material : all) {
        if (!wall::suits(material, use) && material.id != now)
            continue;
        if (material.id == now)
            chosen = static_cast<int>(ids.size());
        words.push_back(material.title);
        ids.push_back(material.id);
    }
    const auto picked =
        choice_row(ui, name, label, chosen, words, "Its weight follows from what it is made of.");
    if (!picked)
        return std::nullopt;
    return ids[static_cast<std::size_t>(*picked)];
}

}  // namespace wallwright::app
