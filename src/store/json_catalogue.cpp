#include "store/json_fields.h"

namespace wallwright::store {

namespace {

template <class Io, class AMaterial>
void material_fields(Io& io, AMaterial& material) {
    io.must("id", material.id);
    io.may("title", material.title);
    io.must("density_low_kg_per_m3", material.density_low);
    io.must("density_high_kg_per_m3", material.density_high);
    io.may("source", material.source);
    io.may("uses", material.uses);
    io.unknown(material.unknown);
}

template <class Io, class SomeNails>
void nails_fields(Io& io, SomeNails& nails) {
    io.must("count", nails.count);
    io.must("diameter_mm", nails.diameter);
    io.must("length_mm", nails.length);
    io.unknown(nails.unknown);
}

template <class Io, class AFixingType>
void fixing_fields(Io& io, AFixingType& fixing) {
    io.must("id", fixing.id);
    io.may("title", fixing.title);
    io.must("kind", fixing.kind);
    io.must("rated_kg", fixing.rated);
    io.size(fixing.footprint);
    io.may("source", fixing.source);
    const wall::FixingType usual;
    io.may("breaking", fixing.breaking);
    io.may("cores", fixing.cores);
    io.may("in_stud", fixing.in_stud);
    io.may("closed", fixing.closed);
    io.object("nails", fixing.nails);
    io.usually("pack", fixing.pack, usual.pack);
    io.usually("price", fixing.price, usual.price);
    io.unknown(fixing.unknown);
}

template <class Io, class ANamedSize>
void size_fields(Io& io, ANamedSize& size) {
    io.must("name", size.name);
    io.size(size.size);
    io.may("source", size.source);
    io.unknown(size.unknown);
}

template <class Io, class ACatalogue>
void catalogue_fields(Io& io, ACatalogue& catalogue) {
    io.list("materials", catalogue.materials);
    io.list("fixings", catalogue.fixings);
    io.list("sizes", catalogue.sizes);
    io.unknown(catalogue.unknown);
}

}  // namespace

void fields(ObjectReader& io, wall::Material& material) {
    material_fields(io, material);
}
void fields(ObjectWriter& io, const wall::Material& material) {
    material_fields(io, material);
}

void fields(ObjectReader& io, wall::Nails& nails) {
    nails_fields(io, nails);
}
void fields(ObjectWriter& io, const wall::Nails& nails) {
    nails_fields(io, nails);
}

void fields(ObjectReader& io, wall::FixingType& fixing) {
    fixing_fields(io, fixing);
}
void fields(ObjectWriter& io, const wall::FixingType& fixing) {
    fixing_fields(io, fixing);
}

void fields(ObjectReader& io, wall::NamedSize& size) {
    size_fields(io, size);
}
void fields(ObjectWriter& io, const wall::NamedSize& size) {
    size_fields(io, size);
}

void fields(ObjectReader& io, wall::Catalogue& catalogue) {
    catalogue_fields(io, catalogue);
}
void fields(ObjectWriter& io, const wall::Catalogue& catalogue) {
    catalogue_fields(io, catalogue);
}

}  // namespace wallwright::store
