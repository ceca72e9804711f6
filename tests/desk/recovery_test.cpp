#include "desk/command.h"
#include "desk/documents.h"
#include "store/json_project.h"
#include "support/command.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>
#include <sys/wait.h>
#include <unistd.h>

#include <thread>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;
using test::ScratchFolder;
using test::write_whole;
namespace fs = std::filesystem;

namespace {

wall::Project row() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1400, 1310}, {300, 400});
    add_piece(project, "gull", {1770, 1290}, {300, 400});
    add_waiting(project, "tide", {200, 300});
    return project;
}

Session unsaved(const fs::path& file = {}) {
    Session session(row(), file);
    session.mark_unsaved();
    return session;
}

std::size_t files_in(const std::string& folder) {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

/// Keeps the session and goes, as a program that crashed.
void crash_with(const Session& session, const std::string& folder) {
    Recovery recovery(folder);
    REQUIRE(recovery.keep(session));
}

}  // namespace

TEST_CASE("Work that a program left behind is found with where it belongs") {
    const ScratchFolder folder;
    const Session session = unsaved("/home/someone/wall.json");
    crash_with(session, folder.path());
    const Recovery next(folder.path());
    const auto found = next.found();
    REQUIRE(found.size() == 1);
    CHECK(found[0].project == session.kept());
    CHECK(found[0].original == "/home/someone/wall.json");
    Recovery::discard(found[0]);
    CHECK(next.found().empty());
    CHECK(files_in(folder.path()) == 0);
}

TEST_CASE("Work without a file keeps the folder of its pictures") {
    const ScratchFolder folder;
    Session session(row(), {}, "/home/someone/pictures");
    session.mark_unsaved();
    crash_with(session, folder.path());
    const auto found = Recovery(folder.path()).found();
    REQUIRE(found.size() == 1);
    CHECK(found[0].original.empty());
    CHECK(found[0].pictures == "/home/someone/pictures");
}

TEST_CASE("The work of a program that still runs is nobody else's to recover") {
    const ScratchFolder folder;
    Recovery running(folder.path());
    REQUIRE(running.keep(unsaved()));
    CHECK(Recovery(folder.path()).found().empty());
    CHECK(running.found().empty());
}

TEST_CASE("A program that is killed leaves its work to the next") {
    const ScratchFolder folder;
    const pid_t child = ::fork();
    if (child == 0) {
        Recovery recovery(folder.path());
        ::_exit(recovery.keep(unsaved()) ? 0 : 1);  // No destructor runs.
    }
    int status = 1;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(status == 0);
    const auto found = Recovery(folder.path()).found();
    REQUIRE(found.size() == 1);
    CHECK(found[0].project == row());
}

TEST_CASE("A second crash does not write over what the first left behind") {
    const ScratchFolder folder;
    crash_with(unsaved("/first.json"), folder.path());
    // Times of files may be as coarse as the system's tick.
    std::this_thread::sleep_for(std::chrono::milliseconds(20));
    crash_with(unsaved("/second.json"), folder.path());
    const auto found = Recovery(folder.path()).found();
    REQUIRE(found.size() == 2);
    CHECK(found[0].original == "/second.json");
    CHECK(found[1].original == "/first.json");
}

TEST_CASE("Saved or given up work leaves nothing behind") {
    const ScratchFolder folder;
    Recovery recovery(folder.path());
    Session session = unsaved();
    REQUIRE(recovery.keep(session));
    CHECK(files_in(folder.path()) > 0);
    session.saved_as("/home/someone/wall.json");
    REQUIRE(recovery.keep(session));
    CHECK(files_in(folder.path()) == 0);
    session.mark_unsaved();
    REQUIRE(recovery.keep(session));
    CHECK(files_in(folder.path()) > 0);
    recovery.forget();
    CHECK(files_in(folder.path()) == 0);
}

TEST_CASE("What cannot be read stays on the disk and is not offered") {
    const ScratchFolder folder;
    write_whole(folder.file("1-1.json"), "{\"format\": ");
    CHECK(Recovery(folder.path()).found().empty());
    CHECK(fs::exists(folder.file("1-1.json")));
}

TEST_CASE("Where the folder is no folder, nothing is offered") {
    const ScratchFolder folder;
    write_whole(folder.file("state"), "no folder");
    CHECK(Recovery(folder.file("state")).found().empty());
}

TEST_CASE("A folder that cannot be made is a problem that names it") {
    const ScratchFolder folder;
    write_whole(folder.file("file"), "");
    Recovery recovery(folder.file("file/under"));
    const Outcome kept = recovery.keep(unsaved());
    REQUIRE_FALSE(kept);
    CHECK(kept.error().where == folder.file("file/under"));
    CHECK(Recovery(folder.file("file/under")).found().empty());
}

TEST_CASE("After any commands the recovery holds what was kept, as a file would", "[law]") {
    rc::prop("keep() and found() give back kept()", [] {
        const ScratchFolder folder;
        Session session(row(), folder.file("wall.json"));
        const auto all = all_commands();
        Recovery recovery(folder.file("recovery"));
        const auto steps = *rc::gen::container<std::vector<std::size_t>>(
            rc::gen::inRange<std::size_t>(0, all.size()));
        session.selection.set({{"kelp"}, {"dune"}, {"gull"}});
        for (const std::size_t step : steps) {
            all[step].run(session);
            RC_ASSERT(recovery.keep(session).has_value());
        }
        recovery = Recovery(folder.file("recovery"));  // The first one has crashed.
        const auto found = recovery.found();
        RC_ASSERT(found.size() == (session.is_saved() ? 0U : 1U));
        if (!found.empty())
            RC_ASSERT(store::write_project(found[0].project) ==
                      store::write_project(session.kept()));
    });
}
