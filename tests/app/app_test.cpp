#include "app/app.h"

#include "desk/documents.h"
#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::app;

namespace {

/// Hears what the window would be called.
class Ear : public Host {
  public:
    std::optional<Texture> texture(const std::filesystem::path&) override { return std::nullopt; }
    void set_title(const std::string& title) override { title_ = title; }
    [[nodiscard]] const std::string& title() const { return title_; }

  private:
    std::string title_;
};

/// The whole app of a person with a home of their own, without its window.
class AtHome {
  public:
    AtHome() : settings_(home_.path()) { window.ui.host = &ear; }

    [[nodiscard]] std::string file(const std::string& name) const { return home_.file(name); }
    [[nodiscard]] std::string a_wall() const {
        wall::Project project = scenes::wall_of(3600, 2400);
        project.title = "Hall";
        scenes::add_piece(project, "kelp", {1000, 1400}, {300, 400});
        desk::Session session(project);
        REQUIRE(desk::save(session, file("hall.json")));
        return file("hall.json");
    }
    [[nodiscard]] static std::filesystem::path settings_file() {
        return desk::settings_folder() / "settings.json";
    }

    void start(const AppOptions& options = {}) {
        auto made = make_app(options);
        REQUIRE(made);
        frame = std::move(*made);
        window.on_key = [this](std::string_view key) { frame->key(key); };
        window.on_focus_lost = [this] { frame->focus_lost(); };
        window.frame([this](Ui& ui) { frame->draw(ui); });
        window.settle();
    }
    /// Ends the program, whatever the person wants.
    void end() {
        window.frame([](Ui&) {});
        frame.reset();
    }
    void move_all_right() {
        window.key("Ctrl+A");
        window.key("Right");
    }

    Ear ear;
    Headless window;
    std::unique_ptr<Frame> frame;

  private:
    test::ScratchFolder home_;
    OwnSettings settings_;
};

std::string demo_title() {
    return desk::demo_wall().value().title + " - Wallwright";
}

std::vector<desk::Recovery::Found> left_behind() {
    return desk::Recovery(desk::state_folder()).found();
}

}  // namespace

TEST_CASE("The first start shows the demo wall, later ones what was open last") {
    AtHome home;
    home.start();
    CHECK(home.ear.title() == demo_title());
    CHECK_FALSE(home.window.has("status/notice"));
    home.end();
    desk::Preferences preferences;
    remember(preferences, home.a_wall());
    REQUIRE(desk::write_preferences(AtHome::settings_file(), preferences));
    home.start();
    CHECK(home.ear.title() == "Hall - Wallwright");
}

TEST_CASE("A file that was named and cannot be opened is a problem that names it") {
    const AtHome home;
    AppOptions options;
    options.file = home.file("half.json");
    test::write_whole(options.file, "{\"format\": ");
    const auto made = make_app(options);
    REQUIRE_FALSE(made);
    CHECK(made.error().where.find("half.json") != std::string::npos);
}

TEST_CASE("Where the last file is broken, the demo wall is shown and the reason told") {
    AtHome home;
    desk::Preferences preferences;
    remember(preferences, home.file("half.json"));
    test::write_whole(home.file("half.json"), "{\"format\": ");
    REQUIRE(desk::write_preferences(AtHome::settings_file(), preferences));
    home.start();
    CHECK(home.ear.title() == demo_title());
    CHECK(home.window.has("status/notice"));
}

TEST_CASE("Work that was not saved is offered by the next start, after an end that nobody wanted") {
    AtHome home;
    AppOptions options;
    options.file = home.a_wall();
    home.start(options);
    home.move_all_right();
    CHECK(home.ear.title() == "* Hall - Wallwright");
    home.frame->tick();
    home.end();
    REQUIRE(left_behind().size() == 1);
    CHECK(left_behind()[0].original == options.file);
    CHECK(left_behind()[0].project.pieces[0].at->x == 1001);
    home.start();
    CHECK(home.ear.title() == demo_title());
    home.window.click("recovery/bring-back-0");
    CHECK(home.ear.title() == "* Hall - Wallwright");
}

TEST_CASE("Without a change there is nothing to recover") {
    AtHome home;
    AppOptions options;
    options.file = home.a_wall();
    home.start(options);
    home.frame->tick();
    home.end();
    CHECK(left_behind().empty());
}

TEST_CASE("Who quits without saving has nothing to recover") {
    AtHome home;
    AppOptions options;
    options.file = home.a_wall();
    home.start(options);
    home.move_all_right();
    home.frame->tick();
    home.frame->close_wanted();
    home.window.settle();
    REQUIRE_FALSE(home.frame->wants_quit());
    home.window.click("unsaved/give-up");
    REQUIRE(home.frame->wants_quit());
    home.end();
    CHECK(left_behind().empty());
}

TEST_CASE("The window closes also while a dialog is open, and asks all the same") {
    {
        AtHome home;
        home.start();
        home.window.key("?");
        home.frame->close_wanted();
        home.window.settle();
        CHECK(home.frame->wants_quit());
    }
    AtHome other;
    AppOptions options;
    options.file = other.a_wall();
    other.start(options);
    other.move_all_right();
    other.window.key("Ctrl+,");
    other.frame->close_wanted();
    other.window.settle();
    CHECK_FALSE(other.frame->wants_quit());
    CHECK(other.window.has("unsaved/save"));
    other.window.click("unsaved/give-up");
    CHECK(other.frame->wants_quit());
}

TEST_CASE("The look that was asked for at the start stays out of the person's settings") {
    AtHome home;
    AppOptions options;
    options.file = home.a_wall();
    options.dark = true;
    options.text_scale = 1.5F;
    options.display_scale = 2;
    home.start(options);
    CHECK(home.frame->look() == Look{3, true});
    home.move_all_right();
    home.window.key("Ctrl+S");  // Writes the settings, for the list of files.
    const desk::Preferences kept = desk::read_preferences(AtHome::settings_file());
    REQUIRE(kept.recent.size() == 1);
    CHECK_FALSE(kept.dark);
    CHECK(kept.text_scale == 1);
}
