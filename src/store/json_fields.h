// The fields of each type of the document as they stand in a file: one pair of functions a type,
// for reading and writing.
#pragma once

#include "store/json_object.h"
#include "wall/project.h"

namespace wallwright::store {

void fields(ObjectReader& io, wall::Project& project);
void fields(ObjectWriter& io, const wall::Project& project);

void fields(ObjectReader& io, wall::Room& room);
void fields(ObjectWriter& io, const wall::Room& room);
void fields(ObjectReader& io, wall::Furniture& furniture);
void fields(ObjectWriter& io, const wall::Furniture& furniture);
void fields(ObjectReader& io, wall::Studs& studs);
void fields(ObjectWriter& io, const wall::Studs& studs);
void fields(ObjectReader& io, wall::Fixture& fixture);
void fields(ObjectWriter& io, const wall::Fixture& fixture);

void fields(ObjectReader& io, wall::HangingStyle& style);
void fields(ObjectWriter& io, const wall::HangingStyle& style);

void fields(ObjectReader& io, wall::Layer& layer);
void fields(ObjectWriter& io, const wall::Layer& layer);
void fields(ObjectReader& io, wall::Frame& frame);
void fields(ObjectWriter& io, const wall::Frame& frame);
void fields(ObjectReader& io, wall::UnderLayer& under);
void fields(ObjectWriter& io, const wall::UnderLayer& under);
void fields(ObjectReader& io, wall::Opening& opening);
void fields(ObjectWriter& io, const wall::Opening& opening);
void fields(ObjectReader& io, wall::Mount& mount);
void fields(ObjectWriter& io, const wall::Mount& mount);
void fields(ObjectReader& io, wall::Print& print);
void fields(ObjectWriter& io, const wall::Print& print);
void fields(ObjectReader& io, wall::Hanger& hanger);
void fields(ObjectWriter& io, const wall::Hanger& hanger);
void fields(ObjectReader& io, wall::Piece& piece);
void fields(ObjectWriter& io, const wall::Piece& piece);

void fields(ObjectReader& io, wall::Material& material);
void fields(ObjectWriter& io, const wall::Material& material);
void fields(ObjectReader& io, wall::Nails& nails);
void fields(ObjectWriter& io, const wall::Nails& nails);
void fields(ObjectReader& io, wall::FixingType& fixing);
void fields(ObjectWriter& io, const wall::FixingType& fixing);
void fields(ObjectReader& io, wall::NamedSize& size);
void fields(ObjectWriter& io, const wall::NamedSize& size);
void fields(ObjectReader& io, wall::Catalogue& catalogue);
void fields(ObjectWriter& io, const wall::Catalogue& catalogue);

/// A target with what stands beside it.
struct TargetInFile {
    std::optional<wall::Target> target;
    wall::UnknownKeys unknown;
};
void fields(ObjectReader& io, TargetInFile& target);
void fields(ObjectWriter& io, const TargetInFile& target);
void fields(ObjectReader& io, wall::Wish& wish);
void fields(ObjectWriter& io, const wall::Wish& wish);
void fields(ObjectReader& io, wall::MeasureWeight& weight);
void fields(ObjectWriter& io, const wall::MeasureWeight& weight);

void fields(ObjectReader& io, wall::Stock& stock);
void fields(ObjectWriter& io, const wall::Stock& stock);
void fields(ObjectReader& io, wall::CardSheet& sheet);
void fields(ObjectWriter& io, const wall::CardSheet& sheet);
void fields(ObjectReader& io, wall::KeptBlank& kept);
void fields(ObjectWriter& io, const wall::KeptBlank& kept);
void fields(ObjectReader& io, wall::Datum& datum);
void fields(ObjectWriter& io, const wall::Datum& datum);

}  // namespace wallwright::store
