// A row for the pixels of a photograph.
#pragma once

#include "app/ui.h"
#include "base/problem.h"
#include "wall/project.h"

#include <optional>
#include <string>

namespace wallwright::app {

struct OptionalPixels {
    std::optional<wall::PixelSize> pixels;  ///< None: not known.
};

/// Two whole numbers above 0 and nothing else, with x, X, × or * between and blanks where one
/// likes: "4000 x 3000"; none where nothing is typed.
Result<OptionalPixels> read_pixels(const std::string& text);

std::optional<OptionalPixels> pixel_row(Ui& ui, const char* name,
                                        const std::optional<wall::PixelSize>& pixels);

}  // namespace wallwright::app
