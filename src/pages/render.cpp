#include "pages/render.h"

#include "base/contract.h"
#include "pages/painter.h"

#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <fmt/format.h>

#include <cmath>

namespace wallwright::pages {

namespace {

using draw::PageDrawing;

constexpr double kPointsPerMm = 72 / 25.4;
constexpr double kMostPixels = 30e6;

/// Bytes that Cairo writes.
cairo_status_t append(void* to, const unsigned char* bytes, unsigned int count) {
    static_cast<std::string*>(to)->append(reinterpret_cast<const char*>(bytes), count);
    return CAIRO_STATUS_SUCCESS;
}

/// The drawing's extent put at the surface's origin, `scale` units of the surface a millimetre.
void paint_on(cairo_surface_t* surface, const PageDrawing& page, double scale) {
    const Context cairo(cairo_create(surface));
    cairo_scale(cairo.get(), scale, scale);
    cairo_translate(cairo.get(), -page.extent.min.x, -page.extent.min.y);
    paint(cairo.get(), page);
    cairo_show_page(cairo.get());
}

void finish(cairo_surface_t* surface) {
    cairo_surface_finish(surface);
    WW_EXPECT(cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS, "a drawing can be painted");
}

}  // namespace

std::string to_pdf(const std::vector<PageDrawing>& pages, const std::string& title) {
    std::string bytes;
    const Surface surface(cairo_pdf_surface_create_for_stream(append, &bytes, 1, 1));
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, title.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATOR, "Wallwright");
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, "");
    for (const PageDrawing& page : pages) {
        cairo_pdf_surface_set_size(surface.get(), page.extent.width() * kPointsPerMm,
                                   page.extent.height() * kPointsPerMm);
        paint_on(surface.get(), page, kPointsPerMm);
    }
    finish(surface.get());
    return bytes;
}

std::string to_svg(const PageDrawing& page) {
    std::string bytes;
    const Surface surface(cairo_svg_surface_create_for_stream(
        append, &bytes, page.extent.width() * kPointsPerMm, page.extent.height() * kPointsPerMm));
    cairo_svg_surface_set_document_unit(surface.get(), CAIRO_SVG_UNIT_PT);
    paint_on(surface.get(), page, kPointsPerMm);
    finish(surface.get());
    return bytes;
}

Result<std::string> to_png(const PageDrawing& page, double pixels_per_mm) {
    const double width = std::ceil(page.extent.width() * pixels_per_mm);
    const double height = std::ceil(page.extent.height() * pixels_per_mm);
    if (!(width >= 1 && height >= 1 && width * height <= kMostPixels))
        return fail({"",
                     fmt::format("a picture of {:.0f} by {:.0f} pixels is not made", width, height),
                     "ask for one of at most 30 million pixels", ""});
    const Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, static_cast<int>(width),
                                                     static_cast<int>(height)));
    const Context background(cairo_create(surface.get()));
    cairo_set_source_rgb(background.get(), 1, 1, 1);
    cairo_paint(background.get());
    paint_on(surface.get(), page, pixels_per_mm);
    std::string bytes;
    cairo_surface_write_to_png_stream(surface.get(), append, &bytes);
    finish(surface.get());
    return bytes;
}

}  // namespace wallwright::pages
