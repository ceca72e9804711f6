#include "desk/documents.h"

#include "edits/pieces.h"
#include "store/json_project.h"
#include "support/command.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <cstdlib>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;
using test::read_whole;
using test::ScratchFolder;
using test::write_whole;
namespace fs = std::filesystem;

namespace {

wall::Project with_picture(const std::string& picture) {
    wall::Project project = wall_of(3600, 2400);
    wall::Piece& piece = add_piece(project, "kelp", {1000, 1300}, {300, 400});
    piece.print = wall::PrintId{"kelp"};
    wall::Print print;
    print.id = {"kelp"};
    print.size = {200, 280};
    print.picture = picture;
    project.prints.push_back(print);
    return project;
}

fs::path picture_of(const Session& session) {
    return fs::path(session.picture_folder()) / session.kept().prints.front().picture;
}

/// An environment variable as it was before, once this is gone.
class Variable {
  public:
    Variable(const char* name, const char* value) : name_(name) {
        if (const char* before = std::getenv(name))
            before_ = before;
        if (value == nullptr)
            ::unsetenv(name);
        else
            ::setenv(name, value, 1);
    }
    Variable(const Variable&) = delete;
    Variable& operator=(const Variable&) = delete;
    ~Variable() {
        if (before_)
            ::setenv(name_, before_->c_str(), 1);
        else
            ::unsetenv(name_);
    }

  private:
    const char* name_;
    std::optional<std::string> before_;
};

}  // namespace

TEST_CASE("A new wall has its furniture on the floor and its frames waiting") {
    Start start;
    start.title = "Hall";
    start.unit = units::LengthUnit::cm;
    start.surface = wall::Surface::wallpaper;
    start.furniture = {{wall::FurnitureType::sofa, {1900, 800}, 700}};
    start.frames = {{{300, 400}, 2}, {{500, 700}, 1}};
    const wall::Project project = new_wall(start).value();
    CHECK(project.title == "Hall");
    CHECK(project.unit == units::LengthUnit::cm);
    CHECK(project.room.surface == wall::Surface::wallpaper);
    CHECK(project.room.furniture.front().place ==
          geometry::Rect<geometry::Wall>{{700, 0}, {2600, 800}});
    REQUIRE(project.pieces.size() == 3);
    CHECK(project.pieces[2].title == "Frame 3");
    CHECK(project.pieces[2].state == wall::PieceState::waiting);
    CHECK(outside_size(project, project.pieces[2]) == geometry::Size{500, 700});
}

TEST_CASE("A new wall without a height is a problem") {
    Start start;
    start.wall.height = 0;
    CHECK_FALSE(new_wall(start).has_value());
}

TEST_CASE("The demo wall is there with all its pictures") {
    const wall::Project project = demo_wall().value();
    CHECK_FALSE(project.pieces.empty());
    for (const wall::Print& print : project.prints)
        CHECK(fs::exists(demo_folder() / print.picture));
}

TEST_CASE("What was saved is opened again as it was") {
    const ScratchFolder folder;
    Session session(with_picture("kelp.png"), {}, folder.path());
    session.mark_unsaved();
    REQUIRE(save(session, folder.file("wall.json")));
    CHECK(session.is_saved());
    CHECK(session.file() == folder.file("wall.json"));
    const Session opened = open(folder.file("wall.json")).value();
    CHECK(opened.kept() == session.kept());
    CHECK(opened.file() == session.file());
    CHECK(opened.is_saved());
    CHECK_FALSE(opened.notice.has_value());
}

TEST_CASE("A file that is missing, spoilt or names what nobody knows is not opened") {
    const ScratchFolder folder;
    CHECK_FALSE(open(folder.file("none.json")).has_value());
    write_whole(folder.file("half.json"), "{\"format\": ");
    CHECK_FALSE(open(folder.file("half.json")).has_value());
    wall::Project project = with_picture("");
    project.frames.front().moulding = wall::MaterialId{"cheese"};
    write_whole(folder.file("cheese.json"), store::write_project(project));
    const auto opened = open(folder.file("cheese.json"));
    REQUIRE_FALSE(opened.has_value());
    CHECK(to_text(opened.error()).find("cheese") != std::string::npos);
}

TEST_CASE("A key that this version does not know is told when the file is opened") {
    const ScratchFolder folder;
    wall::Project project = with_picture("");
    std::string text = store::write_project(project);
    text.insert(text.find('{') + 1, "\n  \"mood\": \"calm\",");
    write_whole(folder.file("wall.json"), text);
    const Session opened = open(folder.file("wall.json")).value();
    REQUIRE(opened.notice.has_value());
    CHECK(opened.notice->text == "This version does not know mood; it is kept, and does nothing.");
}

TEST_CASE("Saved in another folder, the pictures are found from there and from every step") {
    const ScratchFolder folder;
    fs::create_directories(folder.file("old/pictures"));
    fs::create_directories(folder.file("new"));
    write_whole(folder.file("old/pictures/kelp.png"), "picture");
    Session session(with_picture("pictures/kelp.png"), folder.file("old/wall.json"));
    session.apply("Turn Kelp", edits::turn(session.kept(), std::vector{wall::PieceId{"kelp"}}));
    REQUIRE(save(session, folder.file("new/wall.json")));
    CHECK(read_whole(picture_of(session)) == "picture");
    session.undo();
    CHECK(read_whole(picture_of(session)) == "picture");
    const Session opened = open(folder.file("new/wall.json")).value();
    CHECK(opened.kept().prints.front().picture == "../old/pictures/kelp.png");
    CHECK(read_whole(picture_of(opened)) == "picture");
    REQUIRE(save(session, folder.file("old/again.json")));
    CHECK(open(folder.file("old/again.json")).value().kept().prints.front().picture ==
          "pictures/kelp.png");
}

TEST_CASE("A full path of a picture stays when the file goes elsewhere") {
    const ScratchFolder folder;
    fs::create_directories(folder.file("new"));
    const std::string picture = folder.file("kelp.png");
    Session session(with_picture(picture), folder.file("wall.json"));
    REQUIRE(save(session, folder.file("new/wall.json")));
    CHECK(open(folder.file("new/wall.json")).value().kept().prints.front().picture == picture);
}

TEST_CASE("A file that another program changed is replaced only when the person says it again") {
    const ScratchFolder folder;
    const std::string file = folder.file("wall.json");
    Session first(with_picture(""));
    REQUIRE(save(first, file));
    Session session = open(file).value();
    session.mark_unsaved();
    SECTION("after it was opened here, and each change anew") {
        for (const char* theirs : {"theirs", "theirs again"}) {
            write_whole(file, theirs);
            const Outcome outcome = save(session, file);
            REQUIRE_FALSE(outcome);
            CHECK(outcome.error().where == file);
            CHECK(read_whole(file) == theirs);
            CHECK_FALSE(session.is_saved());
        }
        CHECK(save(session, file));
    }
    SECTION("after it was saved here") {
        REQUIRE(save(session, file));
        session.mark_unsaved();
        write_whole(file, "theirs");
        CHECK_FALSE(save(session, file));
        CHECK(save(session, file));
    }
    SECTION("unless it was asked before") {
        write_whole(file, "theirs");
        CHECK(save(session, file, IfChanged::replace));
    }
    SECTION("but one that is as it was, or gone, is written at once") {
        write_whole(file, read_whole(file));
        CHECK(save(session, file));
        fs::remove(file);
        CHECK(save(session, file));
    }
    CHECK(session.is_saved());
    CHECK(open(file).value().kept() == session.kept());
}

TEST_CASE("A wall that cannot be written stays unsaved under its old name") {
    const ScratchFolder folder;
    Session session(with_picture(""), folder.file("wall.json"));
    session.mark_unsaved();
    CHECK_FALSE(save(session, folder.file("none/wall.json")));
    CHECK(session.file() == folder.file("wall.json"));
    CHECK_FALSE(session.is_saved());
}

TEST_CASE("Frames of a table come in as one step and are selected") {
    const ScratchFolder folder;
    write_whole(folder.file("frames.csv"),
                "title,size,x,y\nDune,30x40 cm,100 cm,130 cm\nGull,a4,,\n");
    Session session(with_picture(""));
    REQUIRE(import_frames(session, folder.file("frames.csv")));
    CHECK(session.history().undo_label() == "Import 2 frames");
    CHECK(session.selection.pieces() == std::vector<wall::PieceId>{{"dune"}, {"gull"}});
    CHECK(session.kept().pieces[1].state == wall::PieceState::planned);
    CHECK(session.kept().pieces[2].state == wall::PieceState::waiting);
    session.undo();
    CHECK(session.kept() == with_picture(""));
}

TEST_CASE("A table with a mistake brings in nothing") {
    const ScratchFolder folder;
    write_whole(folder.file("frames.csv"), "title,size\nDune,30x40 cm\nGull,large\n");
    Session session(with_picture(""));
    const Outcome outcome = import_frames(session, folder.file("frames.csv"));
    REQUIRE_FALSE(outcome);
    CHECK(outcome.error().where.find("frames.csv:3") != std::string::npos);
    CHECK_FALSE(session.history().can_undo());
}

TEST_CASE("Settings and state live where the XDG specification says") {
    const Variable home("HOME", "/home/someone");
    {
        const Variable config("XDG_CONFIG_HOME", "/elsewhere/config");
        const Variable state("XDG_STATE_HOME", "/elsewhere/state");
        CHECK(settings_folder() == "/elsewhere/config/wallwright");
        CHECK(state_folder() == "/elsewhere/state/wallwright");
    }
    // "If an implementation encounters a relative path in any of these variables it should consider
    // the path invalid and ignore it": XDG Base Directory Specification 0.8.
    const Variable config("XDG_CONFIG_HOME", "relative");
    const Variable state("XDG_STATE_HOME", nullptr);
    CHECK(settings_folder() == "/home/someone/.config/wallwright");
    CHECK(state_folder() == "/home/someone/.local/state/wallwright");
}

TEST_CASE("Without a home and without a folder for passing things there is still a full path") {
    const Variable home("HOME", nullptr);
    const Variable config("XDG_CONFIG_HOME", nullptr);
    const Variable passing("TMPDIR", "/no/such/folder");
    CHECK(settings_folder() == "/tmp/wallwright");
}
