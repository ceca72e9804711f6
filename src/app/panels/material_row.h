// A row to choose what a part of a frame is made of.
#pragma once

#include "app/widgets.h"

#include <optional>

namespace wallwright::app {

enum class MaterialUse { moulding, glazing, backing };

/// Of the catalogue what suits the use, all of the person's own, and what it is made of now.
std::optional<wall::MaterialId> material_row(Ui& ui, const desk::Session& session, const char* name,
                                             const char* label, const wall::MaterialId& now,
                                             MaterialUse use);

}  // namespace wallwright::app
