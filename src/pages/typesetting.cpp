#include "pages/typesetting.h"

#include "pages/render.h"

#include <algorithm>
#include <functional>

namespace wallwright::pages {

namespace {

constexpr const char* kFamilies = "Inter, Noto Sans, DejaVu Sans, sans-serif";
constexpr double kCapitalShare =
    0.727;  // capitals' height in shares of the font's size, Inter and DejaVu Sans alike
constexpr double kFineness =
    10;  // Pango works in tenths of a millimetre, so that its rounding is not seen

/// Text that Pango accepts: valid UTF-8 on one line.
std::string on_one_line(const std::string& text) {
    const std::unique_ptr<char, Releaser<g_free>> valid(
        g_utf8_make_valid(text.data(), static_cast<gssize>(text.size())));
    std::string line(valid.get());
    std::replace_if(
        line.begin(), line.end(),
        [](unsigned char letter) { return letter < 0x20 || letter == 0x7F; }, ' ');
    return line;
}

/// With no break between a number and the fraction that belongs to it: "16 1/2" stays one word.
std::string with_whole_fractions(std::string line) {
    const auto is_digit = [&line](std::size_t at) {
        return at < line.size() && line[at] >= '0' && line[at] <= '9';
    };
    for (std::size_t at = 1; at < line.size(); ++at) {
        if (line[at] != ' ' || !is_digit(at - 1) || !is_digit(at + 1))
            continue;
        const std::size_t bar = line.find_first_not_of("0123456789", at + 1);
        if (bar != std::string::npos && line[bar] == '/' && is_digit(bar + 1))
            line.replace(at, 1, "\u00A0");
    }
    return line;
}

/// No hinting anywhere: the same widths on every surface.
void set_up(PangoContext* context) {
    const FontOptions options(cairo_font_options_create());
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(context, options.get());
    pango_cairo_context_set_resolution(context, 72);
    pango_context_set_round_glyph_positions(context, FALSE);
}

Layout layout_of(PangoContext* context, const std::string& line, const Type& type) {
    Layout layout(pango_layout_new(context));
    const FontDescription font(pango_font_description_from_string(kFamilies));
    pango_font_description_set_weight(font.get(),
                                      type.bold ? PANGO_WEIGHT_SEMIBOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_absolute_size(font.get(),
                                             kFineness * type.size / kCapitalShare * PANGO_SCALE);
    pango_layout_set_font_description(layout.get(), font.get());
    pango_layout_set_text(layout.get(), line.data(), static_cast<int>(line.size()));
    return layout;
}

/// The places in the text of letters that no font at hand has.
std::vector<std::size_t> unknown_letters(const Layout& layout) {
    std::vector<std::size_t> found;
    const PangoLayoutLine* line = pango_layout_get_line_readonly(layout.get(), 0);
    for (const GSList* run = line->runs; run != nullptr; run = run->next) {
        const auto* item = static_cast<const PangoGlyphItem*>(run->data);
        for (int i = 0; i < item->glyphs->num_glyphs; ++i)
            if ((item->glyphs->glyphs[i].glyph & PANGO_GLYPH_UNKNOWN_FLAG) != 0)
                found.push_back(
                    static_cast<std::size_t>(item->item->offset + item->glyphs->log_clusters[i]));
    }
    std::sort(found.begin(), found.end(), std::greater<>());
    return found;
}

/// Text that can be set: on one line, and a square for each letter that no font at hand has, since
/// Pango's own boxes with the letter's number are larger than the line.
std::string printable(PangoContext* context, const std::string& text, const Type& type) {
    std::string line = on_one_line(text);
    const Layout layout = layout_of(context, line, type);
    if (pango_layout_get_unknown_glyphs_count(layout.get()) == 0)
        return line;
    for (const std::size_t place : unknown_letters(layout)) {
        const char* letter = line.data() + place;
        line.replace(place, static_cast<std::size_t>(g_utf8_next_char(letter) - letter), "□");
    }
    return line;
}

TextContext measuring_context() {
    TextContext context(pango_font_map_create_context(pango_cairo_font_map_get_default()));
    set_up(context.get());
    return context;
}

double width_of(const Layout& layout) {
    PangoRectangle logical;
    pango_layout_get_extents(layout.get(), nullptr, &logical);
    return logical.width / (kFineness * PANGO_SCALE);
}

}  // namespace

double line_height(double size) {
    return 1.75 * size;
}

double text_width(const std::string& text, double size, bool bold) {
    const TextContext context = measuring_context();
    const Type type{size, bold};
    return width_of(layout_of(context.get(), printable(context.get(), text, type), type));
}

std::vector<std::string> lines_of(const std::string& text, const Type& type, double width) {
    const TextContext context = measuring_context();
    const std::string whole = with_whole_fractions(printable(context.get(), text, type));
    const Layout layout = layout_of(context.get(), whole, type);
    pango_layout_set_width(layout.get(), static_cast<int>(kFineness * width * PANGO_SCALE));
    pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    std::vector<std::string> lines;
    for (int i = 0; i < pango_layout_get_line_count(layout.get()); ++i) {
        const PangoLayoutLine* line = pango_layout_get_line_readonly(layout.get(), i);
        std::string words = whole.substr(static_cast<std::size_t>(line->start_index),
                                         static_cast<std::size_t>(line->length));
        while (!words.empty() && words.back() == ' ')
            words.pop_back();
        lines.push_back(std::move(words));
    }
    return lines;
}

std::vector<std::string> few_lines(const std::string& text, const Type& type, double width,
                                   std::size_t most) {
    std::vector<std::string> lines = lines_of(text, type, width);
    if (lines.size() <= most)
        return lines;
    std::string rest = lines[most - 1];
    for (std::size_t i = most; i < lines.size(); ++i)
        rest += " " + lines[i];
    lines.resize(most);
    lines.back() = shortened(rest, type, width);
    return lines;
}

std::string shortened(const std::string& text, const Type& type, double width) {
    const std::string whole = on_one_line(text);
    if (text_width(whole, type.size, type.bold) <= width)
        return whole;
    const char* end = whole.data() + whole.size();
    while (end > whole.data()) {
        end = g_utf8_find_prev_char(whole.data(), end);
        const std::string part = end == nullptr ? "" : std::string(whole.data(), end);
        const std::string dotted = part + "…";
        if (part.empty() || text_width(dotted, type.size, type.bold) <= width)
            return dotted;
    }
    return whole;
}

void paint_line(cairo_t* cairo, const std::string& text, const Type& type) {
    cairo_save(cairo);
    cairo_scale(cairo, 1 / kFineness, 1 / kFineness);
    const TextContext context(pango_cairo_create_context(cairo));
    set_up(context.get());
    const Layout layout = layout_of(context.get(), printable(context.get(), text, type), type);
    cairo_move_to(cairo, 0, 0);
    pango_cairo_show_layout_line(cairo, pango_layout_get_line_readonly(layout.get(), 0));
    cairo_restore(cairo);
}

}  // namespace wallwright::pages
