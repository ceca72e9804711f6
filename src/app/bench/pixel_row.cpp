#include "app/bench/pixel_row.h"

#include "app/text_field.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <string_view>

namespace wallwright::app {

namespace {

/// What is left of a text that is read from its front.
class Reader {
  public:
    explicit Reader(std::string_view text) : text_(text) {}

    bool at_end() {
        skip_blanks();
        return text_.empty();
    }
    std::optional<int> take_number() {
        skip_blanks();
        int number = 0;
        const char* const end = text_.data() + text_.size();
        const auto [stop, error] = std::from_chars(text_.data(), end, number);
        if (error != std::errc() || number <= 0)
            return std::nullopt;
        text_ = {stop, static_cast<std::size_t>(end - stop)};
        return number;
    }
    bool take_sign() {
        skip_blanks();
        for (const std::string_view sign : {"x", "X", "×", "*"})
            if (text_.starts_with(sign)) {
                text_.remove_prefix(sign.size());
                return true;
            }
        return false;
    }

  private:
    void skip_blanks() {
        text_.remove_prefix(std::min(text_.find_first_not_of(" \t"), text_.size()));
    }
    std::string_view text_;
};

}  // namespace

Result<OptionalPixels> read_pixels(const std::string& text) {
    Reader reader(text);
    if (reader.at_end())
        return OptionalPixels{};
    const auto width = reader.take_number();
    const bool has_sign = reader.take_sign();
    const auto height = reader.take_number();
    if (!width || !has_sign || !height || !reader.at_end())
        return fail({"", fmt::format("\"{}\" is no number of pixels", text),
                     "type width and height, as in 4000 x 3000", ""});
    return OptionalPixels{wall::PixelSize{*width, *height}};
}

std::optional<OptionalPixels> pixel_row(Ui& ui, const char* name,
                                        const std::optional<wall::PixelSize>& pixels) {
    const std::string shown =
        pixels ? fmt::format("{} × {}", pixels->width, pixels->height) : std::string();
    return typed_row(ui, "Pixels", {name, shown, "not known"}, field_width(ui),
                     "Of your own photograph, to see whether it will look sharp; leave it empty "
                     "for others.",
                     read_pixels);
}

}  // namespace wallwright::app
