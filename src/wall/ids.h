// One id type a kind. Saved data and undo hold ids, never pointers.
#pragma once

#include <compare>
#include <string>

namespace wallwright::wall {

/// A short name that a person may read and write in the file ("kelp", "sofa"); unique among its
/// kind in a project.
template <class Kind>
struct Id {
    std::string text;
    auto operator<=>(const Id&) const = default;
};

using PieceId = Id<struct PieceKind>;
using FrameId = Id<struct FrameKind>;
using MountId = Id<struct MountKind>;
using PrintId = Id<struct PrintKind>;
using FurnitureId = Id<struct FurnitureIdKind>;
using FixtureId = Id<struct FixtureIdKind>;
using MaterialId = Id<struct MaterialKind>;
using FixingTypeId = Id<struct FixingTypeKind>;
using CardSheetId = Id<struct CardSheetKind>;

}  // namespace wallwright::wall
