// A field of one line to type over. At rest it shows its value at the right like a number in a
// table; while it has the keyboard it is an ordinary field.
#pragma once

#include "app/row.h"
#include "base/problem.h"

#include <optional>
#include <string>

namespace wallwright::app {

struct FieldWords {
    const char* name;   ///< For the probe and ImGui's id.
    std::string shown;  ///< The value as it is.
    std::string empty;  ///< Shown in the quiet ink where the value is empty.
};

/// The words when Enter was pressed or the field was left and they differ from what was shown;
/// Escape gives up. The caller answers with close_field or keep_field.
std::optional<std::string> text_field(Ui& ui, const FieldWords& words, float width);
/// The words were understood: the field shows its value again.
void close_field(Ui& ui, const char* name);
/// They were not: the words stay, with the reason, and after Enter the keyboard too.
void keep_field(Ui& ui, const char* name, const Problem& problem);
/// Why the field's words could not be read, if so, on lines of its own.
void show_reason(Ui& ui, const char* name);

/// A row with such a field. `read` makes a Result of a value from the words.
template <class Read>
auto typed_row(Ui& ui, const char* label, const FieldWords& words, float width,
               const std::string& why, Read read)
    -> std::optional<typename decltype(read(std::string()))::value_type> {
    const Row row(ui, label, width, why);
    const std::optional<std::string> typed = text_field(ui, words, row.width());
    if (!typed) {
        show_reason(ui, words.name);
        return std::nullopt;
    }
    auto value = read(*typed);
    if (value) {
        close_field(ui, words.name);
        return std::move(*value);
    }
    keep_field(ui, words.name, value.error());
    show_reason(ui, words.name);
    return std::nullopt;
}

}  // namespace wallwright::app
