// Cairo's and Pango's objects, released when their owner goes.
#pragma once

#include <pango/pangocairo.h>

#include <memory>

namespace wallwright::pages {

template <auto kRelease>
struct Releaser {
    template <class T>
    void operator()(T* object) const {
        kRelease(object);
    }
};

using Surface = std::unique_ptr<cairo_surface_t, Releaser<cairo_surface_destroy>>;
using Context = std::unique_ptr<cairo_t, Releaser<cairo_destroy>>;
using Pattern = std::unique_ptr<cairo_pattern_t, Releaser<cairo_pattern_destroy>>;
using FontOptions = std::unique_ptr<cairo_font_options_t, Releaser<cairo_font_options_destroy>>;
using FontDescription =
    std::unique_ptr<PangoFontDescription, Releaser<pango_font_description_free>>;
using TextContext = std::unique_ptr<PangoContext, Releaser<g_object_unref>>;
using Layout = std::unique_ptr<PangoLayout, Releaser<g_object_unref>>;

}  // namespace wallwright::pages
