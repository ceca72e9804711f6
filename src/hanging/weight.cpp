#include "hanging/weight.h"

#include <algorithm>

namespace wallwright::hanging {

namespace {

using geometry::Size;

constexpr double kClearanceLeast = 1;  ///< mm in all, of the rebate over what lies in it.
constexpr double kClearanceMost = 3;
constexpr double kUnknownDensity = 2700;  ///< kg/m3: aluminium, GNU units 2.22.
constexpr double kPaperTolerance = 0.05;  ///< A print paper maker's specification.
constexpr Kilograms kHangerMost{0.05};
constexpr double kScaleTolerance = 0.02;
constexpr Kilograms kScaleStep{0.01};
constexpr double kMm3PerM3 = 1e9;
constexpr double kMm2PerM2 = 1e6;
constexpr double kGramsPerKilogram = 1000;

struct Range {
    double low = 0;
    double high = 0;
};

Range density_of(const wall::Catalogue& catalogue, const wall::MaterialId& id) {
    const wall::Material* material = find(catalogue, id);
    if (material == nullptr)
        return {0, kUnknownDensity};
    return {material->density_low, material->density_high};
}

PartMass part_of(const char* name, Range volume_mm3, Range density) {
    return {name,
            {volume_mm3.low / kMm3PerM3 * density.low},
            {volume_mm3.high / kMm3PerM3 * density.high}};
}

Size grown(Size size, double by) {
    return {std::max(0.0, size.width + by), std::max(0.0, size.height + by)};
}

Size sight_size(const wall::Frame& frame) {
    return grown(frame.outside, -2 * frame.moulding_width);
}

Size rebate_size(const wall::Frame& frame) {
    return grown(sight_size(frame), 2 * frame.rebate_width);
}

/// The area of a sheet that lies in the rebate, mm2.
Range sheet_area(const wall::Frame& frame) {
    const Size rebate = rebate_size(frame);
    return {grown(rebate, -kClearanceMost).area(), grown(rebate, -kClearanceLeast).area()};
}

/// Outer less sight times depth, less what the rebate takes away.
double moulding_volume(const wall::Frame& frame) {
    const double sight = sight_size(frame).area();
    const double solid = (frame.outside.area() - sight) * frame.depth;
    const double rebate =
        (rebate_size(frame).area() - sight) * std::min(frame.rebate_depth, frame.depth);
    return std::max(0.0, solid - rebate);
}

/// One board of a mount, mm2: the blank less its window, that of the lowest board, which is the
/// smallest. Without a print, or with several windows, they are not known: anything from uncut card
/// down to a window as large as the sight size. A print that floats has none.
Range mount_area(const wall::Frame& frame, const wall::Mount& mount, const wall::Print* print) {
    const Range blank = sheet_area(frame);
    if (mount.floats)
        return blank;
    if (print == nullptr || !mount.openings.empty())
        return {std::max(0.0, blank.low - sight_size(frame).area()), blank.high};
    const double window = grown(print->size, -2 * mount.overlap).area();
    return {std::max(0.0, blank.low - window), std::max(0.0, blank.high - window)};
}

PartMass print_mass(const wall::Print& print) {
    const double mass =
        print.size.area() / kMm2PerM2 * print.grams_per_square_metre / kGramsPerKilogram;
    return {"print", {(1 - kPaperTolerance) * mass}, {(1 + kPaperTolerance) * mass}};
}

std::vector<PartMass> parts_of(const wall::Project& project, const wall::Catalogue& catalogue,
                               const wall::Piece& piece) {
    const wall::Frame& frame = frame_of(project, piece);
    const wall::Print* print = piece.print ? find(project, *piece.print) : nullptr;
    const wall::Mount* mount = piece.mount ? find(project, *piece.mount) : nullptr;
    std::vector<PartMass> parts;
    const auto add_sheet = [&](const char* name, const wall::Layer& layer, Range area) {
        if (layer.thickness > 0)
            parts.push_back(part_of(name, {area.low * layer.thickness, area.high * layer.thickness},
                                    density_of(catalogue, layer.material)));
    };
    const double volume = moulding_volume(frame);
    parts.push_back(part_of("moulding", {volume, volume}, density_of(catalogue, frame.moulding)));
    add_sheet("glazing", frame.glazing, sheet_area(frame));
    add_sheet("backing", frame.backing, sheet_area(frame));
    if (mount != nullptr) {
        const Range area = mount_area(frame, *mount, print);
        add_sheet("mount", mount->card, area);
        for (const wall::UnderLayer& layer : mount->under)
            add_sheet("mount layer", layer.card, area);
    }
    for (const wall::Print* one : prints_in(project, piece))
        parts.push_back(print_mass(*one));
    parts.push_back({"hanger", {0}, kHangerMost});
    return parts;
}

}  // namespace

PieceMass weigh(const wall::Project& project, const wall::Catalogue& catalogue,
                const wall::Piece& piece) {
    PieceMass mass;
    mass.parts = parts_of(project, catalogue, piece);
    if (piece.weighed) {
        const Kilograms spread = std::max(kScaleTolerance * *piece.weighed, kScaleStep);
        mass.weighed = true;
        mass.low = std::max(*piece.weighed - spread, Kilograms{0});
        mass.high = *piece.weighed + spread;
        return mass;
    }
    for (const PartMass& part : mass.parts) {
        mass.low = mass.low + part.low;
        mass.high = mass.high + part.high;
    }
    return mass;
}

}  // namespace wallwright::hanging
