// A small picture of the wall that is being begun.
#pragma once

#include "app/ui.h"
#include "desk/documents.h"

namespace wallwright::app {

/// The wall with what stands before it, and the frames below it, in what is left of the column but
/// no higher than `height` px.
void start_preview(Ui& ui, const desk::Start& start, float height);

}  // namespace wallwright::app
