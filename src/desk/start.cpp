#include "desk/documents.h"
#include "edits/edit.h"
#include "store/files.h"
#include "store/json_project.h"

#include <fmt/format.h>

namespace wallwright::desk {

namespace {

constexpr const char* kDemoName = "attic.json";

Result<wall::Project> furnished(wall::Project project, const std::vector<Start::Stands>& all) {
    for (const Start::Stands& one : all) {
        wall::Furniture furniture;
        furniture.type = one.type;
        furniture.place = wall::Rect<wall::Wall>::at({one.left, 0}, one.size);
        auto added = edits::add_furniture(std::move(project), std::move(furniture));
        if (!added)
            return added;
        project = std::move(*added);
    }
    return project;
}

std::vector<wall::FrameRow> rows_of(const std::vector<Start::Frames>& all) {
    std::vector<wall::FrameRow> rows;
    for (const Start::Frames& alike : all) {
        for (int i = 0; i < alike.count; ++i) {
            wall::FrameRow row;
            row.title = fmt::format("Frame {}", rows.size() + 1);
            row.outside = alike.outside;
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

}  // namespace

Result<wall::Project> new_wall(const Start& start) {
    auto project = edits::start(start.wall, start.unit);
    if (!project)
        return project;
    project->title = start.title;
    project->room.surface = start.surface;
    auto with_furniture = furnished(std::move(*project), start.furniture);
    if (!with_furniture)
        return with_furniture;
    return edits::add_frames(std::move(*with_furniture), rows_of(start.frames));
}

std::filesystem::path demo_folder() {
    std::error_code error;
    const std::filesystem::path installed = WW_DEMO_INSTALLED;
    return std::filesystem::exists(installed / kDemoName, error) ? installed : WW_DEMO_SOURCE;
}

Result<wall::Project> demo_wall() {
    const std::filesystem::path file = demo_folder() / kDemoName;
    const auto text = store::read_file(file);
    if (!text)
        return fail(text.error());
    return store::read_project(*text, file.string());
}

}  // namespace wallwright::desk
