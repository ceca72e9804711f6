// What is selected: pieces, or one thing of the room.
#pragma once

#include "wall/project.h"

#include <optional>
#include <variant>
#include <vector>

namespace wallwright::desk {

using Thing = std::variant<wall::PieceId, wall::FurnitureId, wall::FixtureId>;

/// Several pieces at once, or one piece of furniture, or one fixture; never a mixture. Pieces are
/// in the order in which they were taken.
class Selection {
  public:
    [[nodiscard]] bool empty() const { return things_.empty(); }
    [[nodiscard]] bool has(const Thing& thing) const;
    [[nodiscard]] const std::vector<Thing>& things() const { return things_; }
    [[nodiscard]] std::vector<wall::PieceId> pieces() const;
    /// The piece, when one and nothing else is selected; likewise the others.
    [[nodiscard]] std::optional<wall::PieceId> one_piece() const;
    [[nodiscard]] std::optional<wall::FurnitureId> furniture() const;
    [[nodiscard]] std::optional<wall::FixtureId> fixture() const;

    void clear() { things_.clear(); }
    void set(Thing thing) { things_ = {std::move(thing)}; }
    void set(const std::vector<wall::PieceId>& pieces);
    /// Adds a piece to the selected pieces or takes it out; anything else replaces what there is.
    void toggle(const Thing& thing);
    /// Leaves out what the project does not have.
    void keep_only_in(const wall::Project& project);

    bool operator==(const Selection&) const = default;

  private:
    std::vector<Thing> things_;
};

/// Where a thing is; a waiting piece has no place of its own.
std::optional<geometry::Rect<geometry::Wall>> place_of(const wall::Project& project,
                                                       const Thing& thing);
/// "Kelp", "the sofa".
std::string title_of(const wall::Project& project, const Thing& thing);

}  // namespace wallwright::desk
