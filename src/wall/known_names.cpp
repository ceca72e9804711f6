#include "wall/validity.h"

#include <fmt/format.h>

#include <string_view>

namespace wallwright::wall {

namespace {

template <class T>
std::string names_of(const std::vector<T>& all) {
    std::string names;
    for (const T& one : all)
        names += (names.empty() ? "" : ", ") + one.id.text;
    return names;
}

class UnknownNames {
  public:
    explicit UnknownNames(const Catalogue& catalogue) : catalogue_(catalogue) {}

    void check(const std::string& where, const MaterialId& material) {
        if (find(catalogue_, material) == nullptr)
            add(where, "material", material.text, names_of(catalogue_.materials));
    }
    void check(const std::string& where, const Layer& layer) {
        if (layer.thickness > 0)
            check(where + "/material", layer.material);
    }
    void check(const std::string& where, const FixingTypeId& fixing) {
        if (find(catalogue_, fixing) == nullptr)
            add(where, "fixing", fixing.text, names_of(catalogue_.fixings));
    }
    std::vector<Problem> take() { return std::move(found_); }

  private:
    void add(const std::string& where, std::string_view kind, const std::string& name,
             const std::string& known) {
        found_.push_back({where, fmt::format("there is no {} \"{}\" in the catalogue", kind, name),
                          fmt::format("use one of {}, or add it under own", known), ""});
    }

    const Catalogue& catalogue_;
    std::vector<Problem> found_;
};

}  // namespace

std::vector<Problem> unknown_names(const Project& project, const Catalogue& catalogue) {
    UnknownNames unknown(catalogue);
    for (const Frame& frame : project.frames) {
        const std::string where = "frames/" + frame.id.text;
        unknown.check(where + "/moulding", frame.moulding);
        unknown.check(where + "/glazing", frame.glazing);
        unknown.check(where + "/backing", frame.backing);
    }
    for (const Mount& mount : project.mounts) {
        const std::string where = "mounts/" + mount.id.text;
        unknown.check(where + "/card", mount.card);
        for (std::size_t i = 0; i < mount.under.size(); ++i)
            unknown.check(fmt::format("{}/under/#{}/card", where, i + 1), mount.under[i].card);
    }
    for (const Piece& piece : project.pieces)
        if (piece.fixing)
            unknown.check("pieces/" + piece.id.text + "/fixing", *piece.fixing);
    for (const Stock& stock : project.stock)
        unknown.check("stock/" + stock.fixing.text, stock.fixing);
    for (const CardSheet& sheet : project.card)
        unknown.check("card/" + sheet.id.text + "/card", sheet.card);
    return unknown.take();
}

}  // namespace wallwright::wall
