#include "person.h"

#include "app/actions.h"
#include "app/panels/panels.h"
#include "edits/room.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace wallwright::app {

namespace {

bool begins(const std::string& name, const std::string& prefix) {
    return name.compare(0, prefix.size(), prefix) == 0;
}

/// What can be seen of it.
ImVec4 seen(const ItemBox& box) {
    return {std::max(box.min.x, box.clip.x), std::max(box.min.y, box.clip.y),
            std::min(box.max.x, box.clip.z), std::min(box.max.y, box.clip.w)};
}

bool cover(const ItemBox& one, const ItemBox& other) {
    const ImVec4 a = seen(one);
    const ImVec4 b = seen(other);
    return std::min(a.z, b.z) > std::max(a.x, b.x) && std::min(a.w, b.w) > std::max(a.y, b.y);
}

}  // namespace

OwnVariable::OwnVariable(const char* name, const std::string& value) : name_(name) {
    if (const char* before = std::getenv(name))
        before_ = before;
    setenv(name, value.c_str(), 1);
}

OwnVariable::~OwnVariable() {
    if (before_)
        setenv(name_, before_->c_str(), 1);
    else
        unsetenv(name_);
}

Person::Person(wall::Project project, ImVec2 size, float scale)
    : settings(config.path()),
      state{desk::Session(std::move(project)), desk::Preferences{}},
      window(size, scale) {
    state.last_folder = folder.path();
    window.on_key = [this](std::string_view key) { press_key(state, key); };
    window.on_focus_lost = [this] { let_go(state); };
    window.frame([this](Ui& ui) { parts(ui, state); });
    window.settle();
}

void Person::work() {
    state.session.apply("Rename the wall",
                        edits::change_project(state.session.kept(), [](wall::Project& project) {
                            project.title += ", north";
                        }));
    window.settle();
}

std::vector<std::string> Person::overlaps(const std::string& prefix) const {
    std::vector<std::string> names;
    const auto& items = window.ui.probe.items();
    for (auto a = items.begin(); a != items.end(); ++a)
        for (auto b = std::next(a); b != items.end(); ++b)
            if (begins(a->first, prefix) && begins(b->first, prefix) && cover(a->second, b->second))
                names.push_back(fmt::format("{} and {}", a->first, b->first));
    return names;
}

std::vector<std::string> Person::cut_off(const std::string& prefix) const {
    std::vector<std::string> names;
    for (const auto& [name, box] : window.ui.probe.items())
        if (begins(name, prefix) && !window.is_in_sight(name))
            names.push_back(name);
    return names;
}

}  // namespace wallwright::app
