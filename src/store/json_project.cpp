#include "store/json_project.h"

#include "store/json_fields.h"
#include "wall/validity.h"

#include <fmt/format.h>

namespace wallwright::store {

namespace {

void target_field(ObjectReader& io, wall::Project& project) {
    TargetInFile found;
    io.object("target", found);
    project.target = found.target;
    project.target_unknown = std::move(found.unknown);
}
void target_field(ObjectWriter& io, const wall::Project& project) {
    if (project.target)
        io.object("target", TargetInFile{project.target, project.target_unknown});
}

template <class Io, class AProject>
void project_fields(Io& io, AProject& project) {
    io.may("title", project.title);
    io.may("unit", project.unit);
    io.must_object("room", project.room);
    io.object("style", project.style);
    io.list("frames", project.frames);
    io.list("mounts", project.mounts);
    io.list("prints", project.prints);
    io.list("pieces", project.pieces);
    io.list("stock", project.stock);
    io.list("card", project.card);
    io.list("kept_blanks", project.kept_blanks);
    io.may("mount_cut_price", project.mount_cut_price);
    io.may("tape_price", project.tape_price);
    io.may("cord_price", project.cord_price);
    io.may("hangs_on", project.hangs_on);
    io.list("wishes", project.wishes);
    target_field(io, project);
    io.list("weights", project.weights);
    io.object("own", project.own);
    io.object("datum", project.datum);
    io.may("tape", project.tape);
    io.unknown(project.unknown);
}

/// Format and version come before anything else is looked at: the keys of a later version may mean
/// other things.
FirstProblem refusal(const Json& file) {
    FirstProblem problem;
    std::string format;
    int version = 0;
    ObjectReader head(file, "", problem);
    head.must("format", format);
    head.must("version", version);
    if (problem)
        problem->remedy = "give a project file of this program";
    else if (format != kFormatName)
        problem = {"format", fmt::format("must be \"{}\", got \"{}\"", kFormatName, format),
                   "give a project file of this program", ""};
    else if (version > kFormatVersion)
        problem = {"version",
                   fmt::format("the file is of version {}, made by a later Wallwright; this one "
                               "reads up to version {}",
                               version, kFormatVersion),
                   "open it with the later one; nothing was changed", ""};
    else if (version < 1)
        problem = {"version", fmt::format("there is no version {}", version), "write 1", ""};
    return problem;
}

}  // namespace

void fields(ObjectReader& io, wall::Project& project) {
    std::string format;
    int version = 0;
    io.must("format", format);
    io.must("version", version);
    project_fields(io, project);
}
void fields(ObjectWriter& io, const wall::Project& project) {
    io.must("format", std::string(kFormatName));
    io.must("version", kFormatVersion);
    project_fields(io, project);
}

Result<wall::Project> read_project(std::string_view text, const std::string& name) {
    const Result<Json> file = parse_json(text, name);
    if (!file)
        return fail(file.error());
    FirstProblem problem = refusal(*file);
    wall::Project project;
    if (!problem) {
        ObjectReader reader(*file, "", problem);
        fields(reader, project);
    }
    if (problem)
        return fail(within(name, *problem));
    const std::vector<Problem> faults = wall::faults(project);
    if (!faults.empty())
        return fail(within(name, faults.front()));
    return project;
}

std::string write_project(const wall::Project& project) {
    ObjectWriter writer;
    fields(writer, project);
    return to_json_text(std::move(writer).take());
}

}  // namespace wallwright::store
