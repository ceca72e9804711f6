// Which fixing a piece gets when the person has not said.
#pragma once

#include "hanging/drawer.h"
#include "hanging/offer.h"

#include <vector>

namespace wallwright::hanging {

/// What may be chosen for one piece: every offer that carries it, or, where none does, the
/// strongest alone. Empty when the catalogue has nothing for its hanger.
struct Choices {
    std::vector<Offer> offers;
    bool safe = false;
};

/// Left out are: hooks and screws that the wall does not take; what is made for hollow walls while
/// nobody has said what this one is; what pierces a wall that must have no holes, and nails in
/// brick, concrete and tile, where another kind goes; open hooks where the ground shakes and a
/// closed one carries the piece (Earthquake Country Alliance, Secure your hanging objects); hooks
/// whose plate shows above the frame where something else carries the piece unseen, whatever it
/// costs (our choice).
Choices choices_of(const Job& job, const wall::Catalogue& catalogue);

/// True for more strips than the four corners take, and for what shows above the frame: the plate
/// of a hook, the cord of a rail hook.
bool is_awkward(const Job& job, const Offer& offer);

/// The best of the choices for a piece by itself, in the order that hang_all promises. What is in
/// the drawer costs nothing; for a piece that hangs already no fixing does.
std::optional<Offer> choose(const Job& job, const wall::Catalogue& catalogue, const Drawer& drawer);

}  // namespace wallwright::hanging
