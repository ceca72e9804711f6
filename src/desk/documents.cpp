#include "desk/documents.h"

#include "edits/edit.h"
#include "store/catalogue.h"
#include "store/csv.h"
#include "store/files.h"
#include "store/json_project.h"
#include "store/picture_names.h"
#include "wall/validity.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <functional>

namespace wallwright::desk {

namespace fs = std::filesystem;

namespace {

/// A file that is named from the working folder must be found from any other, too.
fs::path full_name(const fs::path& file) {
    std::error_code error;
    fs::path full = fs::absolute(file, error);
    return error ? file : full;
}

std::size_t hash_of(const std::string& text) {
    return std::hash<std::string>()(text);
}

/// Tells once that the session's file holds something new. What cannot be read is written over.
Outcome told_of_change(Session& session) {
    const auto now = store::read_file(session.file());
    if (!now || !session.held || *session.held == hash_of(*now))
        return {};
    session.held = hash_of(*now);
    return fail({session.file().string(),
                 "another program changed this file since it was opened or saved here",
                 "save again to replace it, or save under another name", ""});
}

std::optional<Notice> notice_of_unknown(const wall::Project& project) {
    const std::vector<std::string> paths = wall::unknown_paths(project);
    if (paths.empty())
        return std::nullopt;
    return Notice{false, fmt::format("This version does not know {}; it is kept, and does nothing.",
                                     fmt::join(paths, ", "))};
}

std::vector<wall::PieceId> last_pieces(const wall::Project& project, std::size_t count) {
    std::vector<wall::PieceId> ids;
    for (std::size_t i = project.pieces.size() - count; i < project.pieces.size(); ++i)
        ids.push_back(project.pieces[i].id);
    return ids;
}

}  // namespace

Result<Session> open(const fs::path& file) {
    const auto text = store::read_file(file);
    if (!text)
        return fail(text.error());
    auto project = store::read_project(*text, file.string());
    if (!project)
        return fail(std::move(project.error()));
    const auto unknown = wall::unknown_names(*project, store::catalogue_for(project->own));
    if (!unknown.empty())
        return fail(within(file.string(), unknown.front()));
    Session session(std::move(*project), full_name(file));
    session.held = hash_of(*text);
    session.notice = notice_of_unknown(session.kept());
    return session;
}

Outcome save(Session& session, const fs::path& file, IfChanged changed) {
    const fs::path full = full_name(file);
    if (changed == IfChanged::ask && full == session.file())
        if (auto told = told_of_change(session); !told)
            return told;
    const wall::Project written =
        store::with_pictures_from(session.kept(), session.picture_folder(), full.parent_path());
    const std::string text = store::write_project(written);
    if (auto saved = store::write_file(full, text); !saved)
        return saved;
    session.saved_as(full);
    session.held = hash_of(text);
    return {};
}

Outcome import_frames(Session& session, const fs::path& csv) {
    const auto text = store::read_file(csv);
    if (!text)
        return fail(text.error());
    const auto rows =
        store::read_frames_csv(*text, csv.string(), session.kept().unit, session.catalogue().sizes);
    if (!rows)
        return fail(rows.error());
    auto framed = edits::add_frames(session.kept(), *rows);
    if (!framed)
        return fail(within(csv.string(), std::move(framed.error())));
    session.apply(rows->size() == 1 ? fmt::format("Import {}", rows->front().title)
                                    : fmt::format("Import {} frames", rows->size()),
                  std::move(framed));
    session.selection.set(last_pieces(session.kept(), rows->size()));
    return {};
}

}  // namespace wallwright::desk
