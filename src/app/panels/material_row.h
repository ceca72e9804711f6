// A row to choose what a part of a frame is made of.
#pragma once

#include "app/widgets.h"

#include <optional>

namespace wallwright::app {

/// Of the catalogue what suits the use, and what it is made of now.
std::optional<wall::MaterialId> material_row(Ui& ui, const desk::Session& session, const char* name,
                                             const char* label, const wall::MaterialId& now,
                                             wall::MaterialUse use);

}  // namespace wallwright::app
