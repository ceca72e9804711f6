#include "store/catalogue.h"

#include "base/contract.h"
#include "embedded/catalogue.h"
#include "store/json_fields.h"
#include "wall/validity.h"

namespace wallwright::store {

namespace {

/// The laws of a project's own records are those of any catalogue, so they are asked of a bare wall
/// that owns it.
Outcome check(const wall::Catalogue& catalogue) {
    wall::Project bare;
    bare.room.outline.corners = {{0, 0}, {1000, 0}, {1000, 1000}, {0, 1000}};
    bare.own = catalogue;
    const std::vector<Problem> faults = wall::faults(bare);
    if (!faults.empty())
        return fail(faults.front());
    return {};
}

wall::Catalogue read_built_in() {
    wall::Catalogue catalogue;
    for (const embedded::EmbeddedFile& file : embedded::embedded_catalogue())
        WW_EXPECT(read_catalogue(file.text, std::string(file.name), catalogue),
                  "the built-in catalogue is sound");
    return catalogue;
}

}  // namespace

const wall::Catalogue& built_in_catalogue() {
    static const wall::Catalogue kCatalogue = read_built_in();
    return kCatalogue;
}

wall::Catalogue catalogue_for(const wall::Catalogue& own) {
    return wall::with_own(built_in_catalogue(), own);
}

Outcome read_catalogue(std::string_view text, const std::string& name, wall::Catalogue& into) {
    const Result<Json> file = parse_json(text, name);
    if (!file)
        return fail(file.error());
    FirstProblem problem;
    wall::Catalogue longer = into;
    ObjectReader reader(*file, "", problem);
    fields(reader, longer);
    if (problem)
        return fail(within(name, *problem));
    if (const Outcome sound = check(longer); !sound)
        return fail(within(name, sound.error()));
    into = std::move(longer);
    return {};
}

}  // namespace wallwright::store
