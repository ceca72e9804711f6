// The boards of a mount: what each is made of, its colour, by how much it shows.
#include "app/bench/mount_parts.h"
#include "app/panels/material_row.h"
#include "app/scoped.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using wall::Layer;
using wall::Mount;
using wall::UnderLayer;

constexpr std::size_t kMostUnder = 4;  // as wall/validity_paper.cpp allows

/// One board: the top one for 0.
Layer& card_of(Mount& mount, std::size_t layer) {
    return layer == 0 ? mount.card : mount.under[layer - 1].card;
}
wall::Colour& colour_of(Mount& mount, std::size_t layer) {
    return layer == 0 ? mount.colour : mount.under[layer - 1].colour;
}

void reveal_row(Ui& ui, State& state, const OneMount& it, std::size_t layer) {
    const auto mm = measure_row(ui, fmt::format("mount/reveal-{}", layer + 1).c_str(), "Reveal",
                                it.mount.under[layer - 1].reveal, it.one.unit,
                                "By which its window is smaller than that of the layer in front, "
                                "on each side.");
    if (mm)
        change_mount(state, it, "Change the reveal of",
                     [layer, mm](Mount& mount) { mount.under[layer - 1].reveal = *mm; });
}

void board_rows(Ui& ui, State& state, const OneMount& it, std::size_t layer) {
    Mount copy = it.mount;
    const auto name = [layer](const char* what) {
        return fmt::format("mount/{}-{}", what, layer + 1);
    };
    if (const auto colour =
            colour_row(ui, name("colour").c_str(), "Colour", colour_of(copy, layer)))
        change_mount(state, it, "Paint",
                     [layer, colour](Mount& mount) { colour_of(mount, layer) = *colour; });
    if (const auto mm =
            measure_row(ui, name("thickness").c_str(), "Thickness", card_of(copy, layer).thickness,
                        it.one.unit, "Of the board; a bevel shows as much of its core."))
        change_mount(state, it, "Change the card of",
                     [layer, mm](Mount& mount) { card_of(mount, layer).thickness = *mm; });
    if (const auto material =
            material_row(ui, state.session, name("material").c_str(), "Made of",
                         card_of(copy, layer).material, wall::MaterialUse::backing))
        change_mount(state, it, "Change the card of", [layer, &material](Mount& mount) {
            card_of(mount, layer).material = *material;
        });
}

/// Like the board in front of it, in the colour that is usual for one behind.
void add_layer(State& state, const OneMount& it) {
    change_mount(state, it, "Add a layer to", [](Mount& mount) {
        UnderLayer layer;
        layer.card = mount.card;
        if (!mount.under.empty())
            layer.reveal = mount.under.back().reveal;
        mount.under.push_back(layer);
    });
}

void layer_part(Ui& ui, State& state, const OneMount& it, std::size_t layer) {
    const ScopedId id(static_cast<int>(layer));
    if (!it.mount.under.empty()) {
        const ScopedFont bold(ui.fonts.bold);
        const char* const where = layer == 0 ? ", on top" : "";
        ImGui::TextUnformatted(fmt::format("Layer {}{}", layer + 1, where).c_str());
    }
    if (layer > 0)
        reveal_row(ui, state, it, layer);
    board_rows(ui, state, it, layer);
    if (layer == 0)
        return;
    if (button(ui, fmt::format("mount/remove-layer-{}", layer + 1).c_str(), "Take this layer out"))
        change_mount(state, it, "Take a layer out of", [layer](Mount& mount) {
            mount.under.erase(mount.under.begin() + static_cast<std::ptrdiff_t>(layer) - 1);
        });
}

}  // namespace

void mount_card(Ui& ui, State& state, const OneMount& it) {
    const std::size_t layers = 1 + it.mount.under.size();
    for (std::size_t layer = 0; layer < layers; ++layer)
        layer_part(ui, state, it, layer);
    if (it.mount.floats) {
        if (layers > 1)
            hint(ui, "Under a print that floats only the top layer is cut.");
        return;
    }
    if (button(ui, "mount/add-layer", "Add a layer behind",
               it.mount.under.size() < kMostUnder
                   ? "Its window is smaller by the reveal, so that its colour shows all round."
                   : "There are as many as a mount may have.",
               ButtonLook::plain, -1, it.mount.under.size() < kMostUnder))
        add_layer(state, it);
}

}  // namespace wallwright::app
