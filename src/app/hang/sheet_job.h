// Which pages are made, and from what: one place for what is printed and for what is shown before.
#pragma once

#include "pages/sheets.h"

#include <array>
#include <functional>
#include <initializer_list>
#include <iterator>
#include <optional>
#include <vector>

namespace wallwright::app {

struct State;

inline constexpr std::size_t kSheetParts = std::size(wall::Names<pages::SheetPart>::values);

/// What the person wants on paper.
struct SheetChoice {
    /// By SheetPart: whether it is wanted. At first all but the templates.
    std::array<bool, kSheetParts> parts = {true, true, true, true, true, true, true, false};
    std::optional<pages::Paper> paper = {};  ///< Else that of the person's unit.
    pages::TemplateKind templates = pages::TemplateKind::pieces;
    bool operator==(const SheetChoice&) const = default;

    [[nodiscard]] bool has(pages::SheetPart part) const {
        return parts[static_cast<std::size_t>(part)];
    }
    [[nodiscard]] bool is_empty() const { return *this == only({}, *this); }
    /// Of these parts alone, the rest as in `other`.
    static SheetChoice only(std::initializer_list<pages::SheetPart> wanted,
                            const SheetChoice& other);
};

/// The chosen paper; where inches are at home else Letter, and A4 elsewhere.
pages::Paper paper_of(const SheetChoice& choice, units::LengthUnit unit);

/// All that pages are made from, as values.
struct SheetJob {
    wall::Project project;
    wall::Catalogue catalogue;
    pages::SheetOptions options;
};

/// For the session's kept project. The plan of the card is the one that the person has seen on the
/// bench, where it is of the wall as it is now.
SheetJob sheet_job(State& state, const SheetChoice& choice);
/// Where nobody has seen a plan of the card and one is wanted, it is worked out as long as `go_on`
/// says. None where no part is chosen.
std::vector<pages::Sheet> make_sheets(SheetJob job, const std::function<bool()>& go_on);

/// The plan on the bench, where it is of the wall as it is now; null else. The bench follows the
/// wall only while it is looked at.
const mounts::CardPlan* plan_on_bench(State& state);

}  // namespace wallwright::app
