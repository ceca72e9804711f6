#include "cli/numbered.h"

#include "base/contract.h"
#include "cli/save.h"
#include "pages/render.h"
#include "pages/sheets.h"
#include "store/files.h"

#include <fmt/format.h>

#include <filesystem>
#include <system_error>

namespace wallwright::cli {

namespace fs = std::filesystem;

namespace {

struct File {
    fs::path path;
    std::string bytes;
};

using Stage = std::optional<draw::StageShown>;

Result<std::string> picture_of(wall::Project project, const Loaded& loaded, Stage stage) {
    project.unit = loaded.shown;
    const rules::Assessment assessment = rules::assess(project, loaded.catalogue);
    return pages::to_png(pages::elevation_page(project, assessment, loaded.folder, stage),
                         kPixelsPerMm);
}

}  // namespace

Outcome make_folder(const std::string& folder) {
    std::error_code error;
    fs::create_directories(folder, error);
    if (!error && !fs::is_directory(folder, error))
        error = std::make_error_code(std::errc::not_a_directory);
    if (error)
        return fail({folder, fmt::format("the folder cannot be made: {}", error.message()),
                     "name another, or one that is there", ""});
    return {};
}

Result<std::string> write_numbered(const std::string& folder, const Numbered& numbered,
                                   const Loaded& loaded) {
    WW_EXPECT(!numbered.projects.empty(), "there is something to write");
    std::vector<File> files;
    std::string stem;
    int number = numbered.first;
    const int last = number + static_cast<int>(numbered.projects.size()) - 1;
    for (const wall::Project& project : numbered.projects) {
        const Stage stage =
            numbered.are_stages ? Stage(draw::StageShown{number, last}) : std::nullopt;
        stem = (fs::path(folder) / fmt::format("{}-{}", numbered.name, number++)).string();
        auto picture = picture_of(project, loaded, stage);
        if (!picture)
            return fail(within(stem + ".png", std::move(picture.error())));
        files.push_back({stem + ".json", text_in(folder, project, loaded)});
        files.push_back({stem + ".png", std::move(*picture)});
    }
    for (const File& file : files)
        if (auto saved = store::write_file(file.path, file.bytes); !saved)
            return fail(std::move(saved.error()));
    return fmt::format("Wrote {}{}.png\n", files.front().path.string(),
                       files.size() == 2 ? " and " + stem : " to " + stem);
}

}  // namespace wallwright::cli
