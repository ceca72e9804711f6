#include "desk/session.h"

#include "base/problem.h"
#include "store/catalogue.h"

#include <atomic>
#include <utility>

namespace wallwright::desk {

namespace {

std::uint64_t next_version() {
    static std::atomic<std::uint64_t> last{0};
    return ++last;
}

}  // namespace

Session::Session(wall::Project project, std::filesystem::path file, std::filesystem::path pictures)
    : history_(std::move(project)),
      file_(std::move(file)),
      pictures_(pictures.empty() ? file_.parent_path() : std::move(pictures)),
      version_(next_version()),
      kept_version_(version_) {}

const wall::Project& Session::project() const {
    return preview_ ? *preview_ : history_.now();
}

const rules::Assessment& Session::assessment() const {
    if (!assessment_)
        assessment_ = rules::assess(project(), store::built_in_catalogue());
    return *assessment_;
}

wall::Catalogue Session::catalogue() const {
    return store::catalogue_for(project().own);
}

bool Session::apply(std::string label, Result<wall::Project> changed_project,
                    const std::string& burst) {
    if (!changed_project) {
        notice = Notice{true, to_text(changed_project.error())};
        return false;
    }
    preview_.reset();
    history_.push(std::move(label), std::move(*changed_project), burst);
    notice.reset();
    kept_changed();
    return true;
}

void Session::preview(Result<wall::Project> changed_project) {
    if (!changed_project) {
        notice = Notice{true, to_text(changed_project.error())};
        return;
    }
    if (*changed_project == project())
        return;
    preview_ = std::move(*changed_project);
    changed();
}

void Session::keep_preview(std::string label) {
    if (!preview_)
        return;
    history_.push(std::move(label), std::move(*preview_));
    preview_.reset();
    kept_changed();
}

void Session::drop_preview() {
    if (!preview_)
        return;
    preview_.reset();
    changed();
}

void Session::undo() {
    drop_preview();
    history_.undo();
    kept_changed();
}

void Session::redo() {
    drop_preview();
    history_.redo();
    kept_changed();
}

std::string Session::picture_folder() const {
    return pictures_.string();
}

void Session::saved_as(std::filesystem::path file) {
    file_ = std::move(file);
    if (pictures_.empty())
        pictures_ = file_.parent_path();
    history_.mark_saved();
}

void Session::kept_changed() {
    changed();
    kept_version_ = version_;
}

void Session::changed() {
    version_ = next_version();
    assessment_.reset();
    pointed_out.reset();
    selection.keep_only_in(project());
}

}  // namespace wallwright::desk
