// Small things that panels are made of: rows of a label and a value, numbers that can be typed over
// in any unit, buttons with a key and a reason.
#pragma once

#include "app/ui.h"
#include "desk/command.h"
#include "units/length.h"
#include "units/mass.h"
#include "wall/date.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace wallwright::app {

/// What the column is about: large words, smaller ones under them, which may be empty.
void panel_title(Ui& ui, const std::string& words, const std::string& under);
/// A heading in the column with a line above it.
void heading(Ui& ui, const char* words);
/// A heading that folds what follows it; true while that is to be shown. `open` until the person
/// says otherwise.
bool section(Ui& ui, const char* name, const char* words, bool open);
/// Wrapped text in the quiet ink.
void hint(Ui& ui, const std::string& words);
/// A tooltip for the item before, wrapped, after a moment's rest of the pointer.
void tip(Ui& ui, const std::string& words);
/// The same below the item, so that it covers none of those beside it.
void tip_below(Ui& ui, const std::string& words);

/// A row: label at the left, value at the right, not to be changed.
void value_row(Ui& ui, const char* label, const std::string& value, const std::string& why = "");

/// A row whose length in mm can be typed over in any unit ("16 1/2 in", "42 cm", "42" in `unit`).
/// It gives the new length when Enter is pressed or the field is left, once; words that are no
/// length keep the field open with the reason below it. `why` is the tooltip. `name` is for the
/// probe and for ImGui's own id.
std::optional<double> length_row(Ui& ui, const char* name, const char* label, double mm,
                                 units::LengthUnit unit, const std::string& why = "");
/// As length_row, for a length that must be more than zero.
std::optional<double> measure_row(Ui& ui, const char* name, const char* label, double mm,
                                  units::LengthUnit unit, const std::string& why = "");
/// As measure_row, for a length that may be left empty; `empty` is shown quietly then.
struct OptionalLength {
    std::optional<double> mm;
};
std::optional<OptionalLength> optional_length_row(Ui& ui, const char* name, const char* label,
                                                  std::optional<double> mm, units::LengthUnit unit,
                                                  const std::string& why = "",
                                                  const std::string& empty = "");
/// Width x height in one row.
std::optional<wall::Size> size_row(Ui& ui, const char* name, const char* label, wall::Size size,
                                   units::LengthUnit unit, const std::string& why = "");
struct OptionalMass {
    std::optional<units::Kilograms> mass;
};
std::optional<OptionalMass> mass_row(Ui& ui, const char* name, const char* label,
                                     std::optional<units::Kilograms> mass, units::LengthUnit unit,
                                     const std::string& why = "", const std::string& empty = "");
struct CountRange {
    int least = 0;
    int most = 999;
};
/// A whole number, least and most being allowed.
std::optional<int> count_row(Ui& ui, const char* name, const char* label, int count,
                             const std::string& why = "", CountRange range = {});
/// As count_row, for one that may be left empty.
struct OptionalCount {
    std::optional<int> count;
};
std::optional<OptionalCount> optional_count_row(Ui& ui, const char* name, const char* label,
                                                std::optional<int> count, CountRange range,
                                                const std::string& why = "",
                                                const std::string& empty = "");
/// A day, typed as 2026-11-25, which may be left empty.
struct OptionalDate {
    std::optional<wall::Date> date;
};
std::optional<OptionalDate> date_row(Ui& ui, const char* name, const char* label,
                                     const std::optional<wall::Date>& date,
                                     const std::string& why = "", const std::string& empty = "");
/// Words; gives them when the field is left or Enter is pressed, if they changed.
std::optional<std::string> text_row(Ui& ui, const char* name, const char* label,
                                    const std::string& text, const std::string& why = "");
/// One of several; `shown` are the words for each. Gives the index that was chosen, if another.
std::optional<int> choice_row(Ui& ui, const char* name, const char* label, int chosen,
                              std::span<const std::string> shown, const std::string& why = "");
/// In what unit lengths are shown.
std::optional<units::LengthUnit> unit_row(Ui& ui, const char* name, units::LengthUnit unit);
std::optional<bool> switch_row(Ui& ui, const char* name, const char* label, bool on,
                               const std::string& why = "");
std::optional<wall::Colour> colour_row(Ui& ui, const char* name, const char* label,
                                       wall::Colour colour, const std::string& why = "");

/// How much of what is allowed is in use: words in a row and a bar under it, with a stroke at the
/// limit. 1 is all that there is.
struct Share {
    double used = 0;
    double limit = 1;
    std::string words;
    bool is_good = true;  ///< Else the bar is in the colour of a stop.
};
/// The bar alone, from its upper left corner to its lower right one, in px of the window.
void share_bar(const Ui& ui, ImVec2 low, ImVec2 high, const Share& share);
void share_row(Ui& ui, const char* label, const Share& share, const std::string& why = "");

enum class ButtonLook { plain, main };
/// `width` in px at a scale of 1, 0 for as wide as the words, -1 for all there is.
bool button(Ui& ui, const char* name, const char* words, const std::string& why = "",
            ButtonLook look = ButtonLook::plain, float width = 0, bool enabled = true);
/// The button of a command: its name, its help and key as the tooltip, why it cannot be run now.
/// Runs it.
void command_button(Ui& ui, desk::Session& session, desk::CommandId id,
                    ButtonLook look = ButtonLook::plain, float width = 0);
/// Buttons one beside the other as they fit: call next() before each with its words.
class ButtonFlow {
  public:
    void next(std::string_view words);

  private:
    bool first_ = true;
};
/// Those of several commands in a flow. `said` is what the heading above says already and their
/// names need not repeat.
void command_buttons(Ui& ui, desk::Session& session, std::span<const desk::CommandId> ids,
                     std::string_view said = "");

/// "two rings" for the name "two_rings" of an enumeration.
std::string spoken(std::string_view name);
/// With a capital at the beginning, where that is a letter of ASCII.
std::string capital(std::string words);
template <class Enum>
std::vector<std::string> spoken_names() {
    std::vector<std::string> names;
    for (const std::string_view name : wall::Names<Enum>::values)
        names.push_back(spoken(name));
    return names;
}

}  // namespace wallwright::app
