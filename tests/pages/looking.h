// Looks into pages for tests.
#pragma once

#include "pages/sheet.h"

#include <string>
#include <vector>

namespace wallwright::test {

using PageText = draw::Text<geometry::Page>;
using PagePath = draw::Path<geometry::Page>;

template <class OneShape>
std::vector<OneShape> shapes_in(const pages::Shapes& shapes) {
    std::vector<OneShape> found;
    for (const auto& shape : shapes)
        if (const auto* one = std::get_if<OneShape>(&shape))
            found.push_back(*one);
    return found;
}

/// All words, one text a line.
std::string words_in(const pages::Shapes& shapes);
int count_text(const pages::Shapes& shapes, const std::string& words);
bool has_text(const pages::Shapes& shapes, const std::string& words);

/// What the text covers as painted.
pages::Area painted_box(const PageText& text);
pages::Area bounds_of(const PagePath& path);

/// Pairs of texts whose letters run into each other, named by their words; none on a good page.
std::vector<std::string> collisions(const pages::Shapes& shapes);
/// Texts, paths and pictures that reach out of the area.
std::vector<std::string> outside(const pages::Shapes& shapes, const pages::Area& area);

}  // namespace wallwright::test
