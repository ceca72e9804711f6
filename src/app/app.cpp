#include "app/app.h"

#include "app/actions.h"
#include "app/panels/panels.h"
#include "edits/edit.h"

#include <fmt/format.h>
#include <imgui_internal.h>  // ClearActiveID

#include <chrono>

namespace wallwright::app {

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::chrono::seconds kBetweenRecoveries{1};

std::string window_title(const State& state) {
    return fmt::format("{}{} - Wallwright", state.session.is_saved() ? "" : "* ",
                       state.session.kept().title);
}

class App : public Frame {
  public:
    App(State state, AppOptions options)
        : state_(std::move(state)),
          first_(state_.preferences),
          options_(std::move(options)),
          recovery_(desk::state_folder()) {
        if (auto found = recovery_.found(); !found.empty())
            state_.dialog = RecoveryDialog{std::move(found)};
    }
    /// Only a program that ends before the person wanted it to leaves something to recover.
    ~App() override {
        if (!state_.quit)
            return;
        recovery_.forget();
        discard_what_was_brought_back();
    }

    [[nodiscard]] Look look() const override {
        const desk::Preferences& now = state_.preferences;
        const bool same_scale = now.text_scale == first_.text_scale;
        const double text =
            same_scale && options_.text_scale ? *options_.text_scale : now.text_scale;
        return {options_.display_scale * static_cast<float>(text),
                now.dark == first_.dark ? now.dark || options_.dark : now.dark};
    }

    void draw(Ui& ui) override {
        parts(ui, state_);
        do_what_waited(state_);
        if (std::exchange(close_wanted_, false))
            want_quit(state_);
        if (std::string title = window_title(state_); ui.host != nullptr && title != title_) {
            ui.host->set_title(title);
            title_ = std::move(title);
        }
    }

    void key(std::string_view key) override { press_key(state_, key); }
    void focus_lost() override { let_go(state_); }
    /// In the next frame, so that a number that is being typed is taken in before.
    void close_wanted() override {
        ImGui::ClearActiveID();
        close_wanted_ = true;
    }

    /// Keeps the work against a crash, a moment after it changed.
    bool tick() override {
        if (std::exchange(state_.other_session, false))
            recovery_.forget();
        if (Clock::now() < next_recovery_)
            return false;
        next_recovery_ = Clock::now() + kBetweenRecoveries;
        const Outcome kept = recovery_.keep(state_.session);
        if (kept)
            discard_what_was_brought_back();
        return tell_once(kept ? std::string() : to_text(kept.error()));
    }

    [[nodiscard]] bool wants_quit() const override { return state_.quit; }

  private:
    void discard_what_was_brought_back() {
        for (const desk::Recovery::Found& found : state_.brought_back)
            desk::Recovery::discard(found);
        state_.brought_back.clear();
    }

    /// True when the problem is another than the last time; empty for none.
    bool tell_once(const std::string& problem) {
        if (problem == told_)
            return false;
        told_ = problem;
        if (!problem.empty())
            state_.session.notice = desk::Notice{true, problem};
        return !problem.empty();
    }

    State state_;
    desk::Preferences first_;  ///< As the options overrule them, until the person changes one.
    AppOptions options_;
    desk::Recovery recovery_;
    Clock::time_point next_recovery_{};
    std::string title_;
    std::string told_;
    bool close_wanted_ = false;
};

/// A flat wall with nothing on it: where not even the demo can be read.
desk::Session bare_session() {
    return desk::Session(edits::start(desk::Start{}.wall, units::LengthUnit::mm).value());
}

desk::Session demo_session() {
    auto demo = desk::demo_wall();
    return demo ? desk::Session(std::move(*demo), {}, desk::demo_folder()) : bare_session();
}

desk::Session usual_session(const desk::Preferences& preferences) {
    if (preferences.recent.empty())
        return demo_session();
    auto last = desk::open(preferences.recent.front());
    if (last)
        return std::move(*last);
    desk::Session demo = demo_session();
    demo.notice = desk::Notice{true, to_text(last.error())};
    return demo;
}

Result<desk::Session> first_session(const AppOptions& options,
                                    const desk::Preferences& preferences) {
    if (options.file.empty())
        return usual_session(preferences);
    return desk::open(options.file);
}

}  // namespace

Result<std::unique_ptr<Frame>> make_app(const AppOptions& options) {
    desk::Preferences preferences =
        desk::read_preferences(desk::settings_folder() / "settings.json");
    auto session = first_session(options, preferences);
    if (!session)
        return fail(std::move(session.error()));
    State state{std::move(*session), std::move(preferences)};
    if (!options.file.empty())
        remember(state.preferences, state.session.file());
    state.step = options.step.value_or(state.step);
    if (options.hang_view) {
        state.step = desk::Step::hang;
        state.hang_view = *options.hang_view;
    }
    return std::make_unique<App>(std::move(state), options);
}

}  // namespace wallwright::app
