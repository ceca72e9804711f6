#include "edits/history.h"

#include <utility>

namespace wallwright::edits {

namespace {

const std::string kNoStep;

}  // namespace

History::History(wall::Project first)
    : states_{{"", "", std::make_shared<const wall::Project>(std::move(first))}},
      saved_(states_.front().project) {}

const wall::Project& History::now() const {
    return *states_[now_].project;
}

void History::push(std::string label, wall::Project project, const std::string& burst) {
    if (project == now())
        return;
    states_.resize(now_ + 1);
    if (can_undo() && !burst.empty() && states_[now_].burst == burst)
        states_.pop_back();
    // A burst that came back to where it began has done nothing.
    if (project != *states_.back().project)
        states_.push_back(
            {std::move(label), burst, std::make_shared<const wall::Project>(std::move(project))});
    if (states_.size() > kMost)
        states_.erase(states_.begin());
    now_ = states_.size() - 1;
}

void History::end_burst() {
    states_[now_].burst.clear();
}

bool History::can_undo() const {
    return now_ > 0;
}

bool History::can_redo() const {
    return now_ + 1 < states_.size();
}

const std::string& History::undo_label() const {
    return can_undo() ? states_[now_].label : kNoStep;
}

const std::string& History::redo_label() const {
    return can_redo() ? states_[now_ + 1].label : kNoStep;
}

void History::undo() {
    if (can_undo())
        --now_;
    end_burst();
}

void History::redo() {
    if (can_redo())
        ++now_;
    end_burst();
}

bool History::is_saved() const {
    return saved_ != nullptr && (saved_ == states_[now_].project || *saved_ == now());
}

void History::mark_saved() {
    saved_ = states_[now_].project;
    end_burst();
}

void History::mark_unsaved() {
    saved_.reset();
}

}  // namespace wallwright::edits
