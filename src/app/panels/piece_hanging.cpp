#include "app/panels/load_share.h"
#include "app/panels/piece_parts.h"
#include "hanging/offer.h"
#include "hanging/weight.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::Hanger;
using wall::HangerType;
using wall::Piece;

struct MeasureRow {
    const char* name;
    const char* label;
    std::optional<double> Hanger::*value;
    const char* why;
};

constexpr MeasureRow kDrop{"piece/drop", "Hanger below top", &Hanger::drop,
                           "From the frame's top to the rings, to the upper ends of the keyholes, "
                           "or to the sawtooth's teeth."};
constexpr MeasureRow kRings{"piece/rings", "Between the rings", &Hanger::ring_spacing,
                            "From the middle of one ring to the middle of the other."};
constexpr MeasureRow kSlots{"piece/rings", "Between the keyholes", &Hanger::ring_spacing,
                            "From the middle of one keyhole to the middle of the other."};
constexpr MeasureRow kCord{"piece/cord", "Length of the cord", &Hanger::cord_length,
                           "From ring to ring, along the cord."};
constexpr MeasureRow kHooks{"piece/hooks", "Between the hooks", &Hanger::hook_spacing,
                            "Of the two hooks in the wall that share the cord."};

std::vector<MeasureRow> measures_of(HangerType type) {
    switch (type) {
        case HangerType::strips:
            return {};
        case HangerType::sawtooth:
            return {kDrop};
        case HangerType::two_rings:
            return {kDrop, kRings};
        case HangerType::keyholes:
            return {kDrop, kSlots};
        case HangerType::cord_one_hook:
            return {kDrop, kRings, kCord};
        case HangerType::cord_two_hooks:
            return {kDrop, kRings, kCord, kHooks};
    }
    return {};
}

void hanger_measures(Ui& ui, State& state, const OnePiece& one) {
    const wall::Size outside = wall::outside_size(one.frame, one.piece);
    const Hanger assumed = hanging::complete(one.piece.hanger, outside);
    bool any_assumed = false;
    for (const MeasureRow& row : measures_of(one.piece.hanger.type)) {
        const auto value = row.value;
        const std::optional<double> taken = one.piece.hanger.*value;
        const std::optional<double> usual = assumed.*value;
        any_assumed = any_assumed || !taken;
        const std::string empty =
            usual ? fmt::format("({})", units::format_length(*usual, one.unit)) : "";
        if (const auto typed =
                optional_length_row(ui, row.name, row.label, taken, one.unit, row.why, empty))
            change_piece(state, one, "Measure the hanger of",
                         [value, typed](Piece& piece) { piece.hanger.*value = typed->mm; });
    }
    if (any_assumed)
        hint(ui, "In brackets: not measured yet, taken as usual for this size.");
}

void hanger_row(Ui& ui, State& state, const OnePiece& one) {
    const std::vector<std::string> types = spoken_names<HangerType>();
    const auto chosen =
        choice_row(ui, "piece/hanger", "Hanger", static_cast<int>(one.piece.hanger.type), types,
                   "What is on the frame's back.");
    if (!chosen)
        return;
    const auto type = HangerType(*chosen);
    const wall::Catalogue catalogue = state.session.catalogue();
    const wall::FixingType* fixing =
        one.piece.fixing ? wall::find(catalogue, *one.piece.fixing) : nullptr;
    const bool stays = fixing != nullptr && hanging::goes_with(type, fixing->kind);
    change_piece(state, one, "Change the hanger of", [type, stays](Piece& piece) {
        piece.hanger.type = type;
        if (!stays)
            piece.fixing.reset();
    });
}

std::string range(const hanging::PieceMass& mass, units::LengthUnit unit) {
    const std::string low = units::format_mass(mass.low, unit);
    const std::string high = units::format_mass(mass.high, unit);
    return low == high ? high : fmt::format("{} to {}", low, high);
}

std::string parts(const hanging::PieceMass& mass, units::LengthUnit unit) {
    std::string words;
    for (const hanging::PartMass& part : mass.parts)
        words += fmt::format("{}{}: {}", words.empty() ? "" : "\n", part.part,
                             units::format_mass(part.high, unit));
    return words;
}

void weight_rows(Ui& ui, State& state, const OnePiece& one) {
    if (const auto typed =
            mass_row(ui, "piece/weighed", "Weighed", one.piece.weighed, one.unit,
                     "On a kitchen scale. Leave it empty to have it worked out.", "not yet"))
        change_piece(state, one, "Weigh", [typed](Piece& piece) { piece.weighed = typed->mass; });
    Piece unweighed = one.piece;
    unweighed.weighed.reset();
    const hanging::PieceMass mass =
        hanging::weigh(state.session.project(), state.session.catalogue(), unweighed);
    value_row(ui, "Worked out", range(mass, one.unit),
              "From the materials, low to high:\n" + parts(mass, one.unit));
}

/// "the best that carries it", then what goes with the hanger.
void fixing_row(Ui& ui, State& state, const OnePiece& one) {
    const wall::Catalogue catalogue = state.session.catalogue();
    std::vector<std::string> words{"chosen for you"};
    std::vector<std::optional<wall::FixingTypeId>> ids{std::nullopt};
    int chosen = 0;
    for (const wall::FixingType& type : catalogue.fixings) {
        if (!hanging::goes_with(one.piece.hanger.type, type.kind) && one.piece.fixing != type.id)
            continue;
        if (one.piece.fixing == type.id)
            chosen = static_cast<int>(ids.size());
        words.push_back(type.title);
        ids.emplace_back(type.id);
    }
    if (const auto picked = choice_row(ui, "piece/fixing", "Fixing", chosen, words,
                                       "Chosen for you: the least that carries it with its "
                                       "margin, from your drawer first."))
        change_piece(
            state, one, "Change the fixing of",
            [id = ids[static_cast<std::size_t>(*picked)]](Piece& piece) { piece.fixing = id; });
}

void load_rows(Ui& ui, const OnePiece& one, const rules::Assessment& found) {
    const auto hanging = std::ranges::find(found.hangings, one.piece.id, &hanging::Hanging::piece);
    if (hanging == found.hangings.end())
        return;
    if (hanging->fixings.empty())
        return hint(ui, "No fixing holds it: see what the wall says.");
    value_row(ui, "Hangs on",
              fmt::format("{} × {}", hanging->fixings.size(), hanging->fixing_title));
    share_row(ui, "Load in use", load_share(*hanging),
              "Of what the packet allows for the one that carries most. The stroke is the limit "
              "that the margin leaves.");
    if (hanging->top_pull)
        value_row(ui, "Pull at the top", units::format_force(*hanging->top_pull, one.unit),
                  "Off the wall, on all that holds it at the top together, since the frame is deep "
                  "and hangs out from the wall.");
    if (hanging->cord)
        value_row(ui, "Pull in the cord", units::format_force(hanging->cord->tension, one.unit));
}

/// What there is to mind when it hangs.
void care_rows(Ui& ui, State& state, const OnePiece& one) {
    if (const auto rough = switch_row(ui, "piece/rough-back", "Rough back", one.frame.rough_back,
                                      "Its back is rough, dusty or soft, so that no strip holds."))
        change_frame(state, one, "Change the back of",
                     [rough](wall::Frame& frame) { frame.rough_back = *rough; });
    if (const auto kept = switch_row(
            ui, "piece/irreplaceable", "Irreplaceable", one.piece.irreplaceable,
            "An heirloom or an original: it is not to hang where it could come to harm."))
        change_piece(state, one, "Change the worth of",
                     [kept](Piece& piece) { piece.irreplaceable = *kept; });
}

}  // namespace

void hanging_part(Ui& ui, State& state, const OnePiece& one) {
    hanger_row(ui, state, one);
    hanger_measures(ui, state, one);
    weight_rows(ui, state, one);
    care_rows(ui, state, one);
    fixing_row(ui, state, one);
    load_rows(ui, one, state.session.assessment());
}

}  // namespace wallwright::app
