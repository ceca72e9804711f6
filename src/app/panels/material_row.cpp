#include "app/panels/material_row.h"

#include <algorithm>

namespace wallwright::app {

namespace {

constexpr std::string_view kGlazings[] = {"glass", "acrylic", "styrene"};
constexpr std::string_view kBackings[] = {"mdf",           "mdf_thin",         "hardboard",
                                          "birch_plywood", "softwood_plywood", "foam_board",
                                          "mount_board"};
/// Boards too thin or too soft to be a moulding.
constexpr std::string_view kOnlyBackings[] = {"mdf_thin", "hardboard", "foam_board", "mount_board"};

bool is_among(std::span<const std::string_view> names, const wall::MaterialId& id) {
    return std::ranges::find(names, id.text) != names.end();
}

bool suits(const wall::MaterialId& id, MaterialUse use) {
    switch (use) {
        case MaterialUse::glazing:
            return is_among(kGlazings, id);
        case MaterialUse::backing:
            return is_among(kBackings, id);
        case MaterialUse::moulding:
            return !is_among(kGlazings, id) && !is_among(kOnlyBackings, id);
    }
    return true;
}

}  // namespace

std::optional<wall::MaterialId> material_row(Ui& ui, const desk::Session& session, const char* name,
                                             const char* label, const wall::MaterialId& now,
                                             MaterialUse use) {
    const wall::Catalogue& own = session.project().own;
    const std::vector<wall::Material> all = session.catalogue().materials;
    std::vector<std::string> words;
    std::vector<wall::MaterialId> ids;
    int chosen = -1;
    for (const wall::Material& material : all) {
        const bool is_own = wall::find(own, material.id) != nullptr;
        if (!suits(material.id, use) && !is_own && material.id != now)
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
