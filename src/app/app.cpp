#include "app/app.h"

#include "app/actions.h"
#include "app/panels/panels.h"
#include "edits/edit.h"

#include <fmt/format.h>

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
    App(State state, float display_scale)
        : state_(std::move(state)), display_scale_(display_scale), recovery_(desk::state_folder()) {
        if (auto found = recovery_.found(); !found.empty())
            state_.dialog = RecoveryDialog{std::move(found)};
    }
    /// Only a program that ends before the person wanted it to leaves something to recover.
    ~App() override {
        if (state_.quit)
            recovery_.forget();
    }

    [[nodiscard]] Look look() const override {
        return {display_scale_ * static_cast<float>(state_.preferences.text_scale),
                state_.preferences.dark};
    }

    void draw(Ui& ui) override {
        parts(ui, state_);
        if (std::string title = window_title(state_); ui.host != nullptr && title != title_) {
            ui.host->set_title(title);
            title_ = std::move(title);
        }
    }

    void key(std::string_view key) override { press_key(state_, key); }
    void focus_lost() override { state_.pointer.cancel(state_.session); }
    void close_wanted() override { want_quit(state_); }

    /// Keeps the work against a crash, a moment after it changed.
    bool tick() override {
        if (std::exchange(state_.other_session, false))
            recovery_.forget();
        if (Clock::now() < next_recovery_)
            return false;
        next_recovery_ = Clock::now() + kBetweenRecoveries;
        if (const Outcome kept = recovery_.keep(state_.session); !kept) {
            state_.session.notice = desk::Notice{true, to_text(kept.error())};
            return true;
        }
        for (const desk::Recovery::Found& found : state_.brought_back)
            desk::Recovery::discard(found);
        state_.brought_back.clear();
        return false;
    }

    [[nodiscard]] bool wants_quit() const override { return state_.quit; }

  private:
    State state_;
    float display_scale_;
    desk::Recovery recovery_;
    Clock::time_point next_recovery_{};
    std::string title_;
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
    if (!preferences.recent.empty())
        if (auto last = desk::open(preferences.recent.front()))
            return std::move(*last);
    return demo_session();
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
    preferences.dark = preferences.dark || options.dark;
    preferences.text_scale =
        options.text_scale.value_or(static_cast<float>(preferences.text_scale));
    auto session = first_session(options, preferences);
    if (!session)
        return fail(std::move(session.error()));
    State state{std::move(*session), std::move(preferences)};
    if (!options.file.empty())
        remember(state.preferences, state.session.file());
    state.step = options.step.value_or(state.step);
    return std::make_unique<App>(std::move(state), options.display_scale);
}

}  // namespace wallwright::app
