#include "cli/load.h"

#include "arrange/measure.h"
#include "store/catalogue.h"
#include "store/files.h"
#include "store/json_project.h"
#include "wall/validity.h"

#include <fmt/format.h>

#include <filesystem>

namespace wallwright::cli {

namespace {

std::string unknown_keys_text(const std::string& file, const wall::Project& project) {
    std::string text;
    for (const std::string& path : wall::unknown_paths(project))
        text += fmt::format(
            "wallwright: {}: {}: this version does not know the key; it is kept, and does "
            "nothing\n",
            file, path);
    return text;
}

std::string unknown_measures_text(const std::string& file, const wall::Project& project) {
    std::string names;
    for (const arrange::Measure& measure : arrange::all_measures())
        names += fmt::format("{}{}", names.empty() ? "" : ", ", measure.name);
    std::string text;
    for (const wall::MeasureWeight& one : project.weights)
        if (arrange::find_measure(one.measure) == nullptr)
            text += fmt::format(
                "wallwright: {}: weights: no measure is called \"{}\", so its weight does nothing; "
                "there are {}\n",
                file, one.measure, names);
    return text;
}

}  // namespace

Result<Loaded> load(const Common& common) {
    const auto text = store::read_file(common.file);
    if (!text)
        return fail(text.error());
    auto project = store::read_project(*text, common.file);
    if (!project)
        return fail(std::move(project.error()));
    const units::LengthUnit shown = unit_of_words(common.units, project->unit);
    const wall::Catalogue catalogue = store::catalogue_for(project->own);
    if (const auto unknown = wall::unknown_names(*project, catalogue); !unknown.empty())
        return fail(within(common.file, unknown.front()));
    const std::string folder = std::filesystem::path(common.file).parent_path().string();
    const std::string aside =
        unknown_keys_text(common.file, *project) + unknown_measures_text(common.file, *project);
    return Loaded{std::move(*project), catalogue, folder, aside, shown};
}

units::LengthUnit unit_of_words(const std::string& units, units::LengthUnit otherwise) {
    return units.empty() ? otherwise : units::parse_unit(units).value();
}

wall::Project as_shown(const Loaded& loaded) {
    wall::Project project = loaded.project;
    project.unit = loaded.shown;
    return project;
}

rules::Assessment assess(const Loaded& loaded) {
    return rules::assess(as_shown(loaded), loaded.catalogue);
}

Status status_of(const std::vector<wall::Finding>& findings) {
    return wall::has_stop(findings) ? Status::stop_finding : Status::fine;
}

}  // namespace wallwright::cli
