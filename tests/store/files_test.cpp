#include "store/files.h"

#include "support/command.h"

#include <catch2/catch.hpp>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <thread>
#include <vector>

namespace wallwright::store {

namespace fs = std::filesystem;
using test::read_whole;
using test::ScratchFolder;
using test::write_whole;

namespace {

std::size_t files_in(const std::string& folder) {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

mode_t permissions(const std::string& path) {
    struct stat status {};
    REQUIRE(::stat(path.c_str(), &status) == 0);
    return status.st_mode & 07777;
}

/// Runs `work` in a process of its own, so that limits and rights of it end with it. Gives
/// waitpid's status.
template <class Work>
int in_child(Work work) {
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0)
        ::_exit(work() ? 0 : 1);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    return status;
}

/// Root may write anywhere, so rights are tried as a person without them.
void become_nobody() {
    constexpr uid_t kNobody = 65534;
    if (::geteuid() == 0 && ::setuid(kNobody) != 0)
        ::_exit(2);
}

bool fails_with(const fs::path& path, std::string_view words) {
    const Outcome done = write_file(path, "new");
    return !done && to_text(done.error()).find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("What is written is read again, byte for byte") {
    const ScratchFolder folder;
    const std::string bytes("a\0b\r\n\xFF", 6);
    REQUIRE(write_file(folder.file("wall.json"), bytes));
    CHECK(read_file(folder.file("wall.json")) == bytes);
    CHECK(files_in(folder.path()) == 1);
    const std::string large(3'000'000, 'x');
    REQUIRE(write_file(folder.file("wall.json"), large));
    CHECK(read_file(folder.file("wall.json")) == large);
}

TEST_CASE("A file that is replaced keeps its permissions, and a new one has the usual ones") {
    const ScratchFolder folder;
    const std::string path = folder.file("wall.json");
    const mode_t mask = ::umask(022);
    REQUIRE(write_file(path, "one"));
    ::umask(mask);
    CHECK(permissions(path) == 0644);
    for (const mode_t mode : {0600U, 0666U, 0640U}) {
        REQUIRE(::chmod(path.c_str(), mode) == 0);
        REQUIRE(write_file(path, "two"));
        CHECK(permissions(path) == mode);
    }
}

TEST_CASE("A link is followed, also to a file that is not there yet") {
    const ScratchFolder folder;
    fs::create_directory(folder.file("deep"));
    fs::create_symlink("deep/wall.json", folder.file("first"));
    fs::create_symlink("first", folder.file("second"));
    for (const char* bytes : {"one", "two"}) {
        REQUIRE(write_file(folder.file("second"), bytes));
        CHECK(fs::is_symlink(folder.file("second")));
        CHECK(fs::is_symlink(folder.file("first")));
        CHECK(read_whole(folder.file("deep/wall.json")) == bytes);
    }
    CHECK(files_in(folder.file("deep")) == 1);
}

TEST_CASE("A link that leads in a circle is a problem") {
    const ScratchFolder folder;
    fs::create_symlink("second", folder.file("first"));
    fs::create_symlink("first", folder.file("second"));
    CHECK_FALSE(write_file(folder.file("first"), "new"));
    CHECK(files_in(folder.path()) == 2);
}

TEST_CASE("A file that cannot be read is named, with the reason") {
    const ScratchFolder folder;
    CHECK(to_text(read_file(folder.file("wall.json")).error()) ==
          folder.file("wall.json") +
              ": cannot be read: No such file or directory; look at its name");
    CHECK(to_text(read_file(folder.file("attic/wall.json")).error())
              .ends_with("look whether the folder \"" + folder.file("attic") + "\" is there"));
    CHECK(to_text(read_file(folder.path()).error()) ==
          folder.path() + ": cannot be read: Is a directory; name a file, not a folder");
}

TEST_CASE("A missing folder is named") {
    const ScratchFolder folder;
    CHECK(fails_with(folder.file("attic/wall.json"),
                     "look whether the folder \"" + folder.file("attic") + "\" is there"));
    CHECK(fails_with(folder.path(), "Is a directory; name a file, not a folder"));
}

TEST_CASE("A folder or a file that may not be written to is left as it is") {
    const ScratchFolder folder;
    const std::string path = folder.file("wall.json");
    write_whole(path, "old");
    REQUIRE(::chmod(path.c_str(), 0666) == 0);
    REQUIRE(::chmod(folder.path().c_str(), 0555) == 0);
    const int locked_folder = in_child([&path] {
        become_nobody();
        return fails_with(path, "Permission denied; choose a place that you may write to");
    });
    CHECK(locked_folder == 0);
    REQUIRE(::chmod(folder.path().c_str(), 0777) == 0);
    REQUIRE(::chmod(path.c_str(), 0444) == 0);
    const int locked_file = in_child([&path] {
        become_nobody();
        return fails_with(path, "Permission denied; choose a place that you may write to");
    });
    CHECK(locked_file == 0);
    CHECK(read_whole(path) == "old");
    CHECK(files_in(folder.path()) == 1);
}

TEST_CASE("When there is no room the old file stays and nothing else is left behind") {
    const ScratchFolder folder;
    const std::string path = folder.file("wall.json");
    write_whole(path, "old");
    const int status = in_child([&path] {
        const rlimit most{4096, 4096};
        std::signal(SIGXFSZ, SIG_IGN);
        ::setrlimit(RLIMIT_FSIZE, &most);
        const Outcome done = write_file(path, std::string(100'000, 'x'));
        return !done &&
               done.error().remedy == "make room on the disk; a file that was there is as it was";
    });
    CHECK(status == 0);
    CHECK(read_whole(path) == "old");
    CHECK(files_in(folder.path()) == 1);
}

TEST_CASE(
    "A program that is killed while it writes leaves the old file, and the next one can write") {
    const ScratchFolder folder;
    const std::string path = folder.file("wall.json");
    write_whole(path, "old");
    const int status = in_child([&path] {
        const rlimit most{4096, 4096};
        ::setrlimit(RLIMIT_FSIZE, &most);
        return write_file(path, std::string(100'000, 'x')).has_value();
    });
    CHECK(WIFSIGNALED(status));
    CHECK(read_whole(path) == "old");
    REQUIRE(write_file(path, "new"));
    CHECK(read_whole(path) == "new");
}

TEST_CASE("Unfinished files of others with the same name do not stand in the way") {
    const ScratchFolder folder;
    for (int i = 0; i < 5; ++i)
        write_whole(folder.file(".wallwright-" + std::to_string(::getpid()) + "-" +
                                std::to_string(i) + ".tmp"),
                    "theirs");
    REQUIRE(write_file(folder.file("wall.json"), "new"));
    CHECK(read_whole(folder.file("wall.json")) == "new");
    CHECK(files_in(folder.path()) == 6);
}

TEST_CASE("Of several that write at once one wins whole") {
    const ScratchFolder folder;
    const std::string path = folder.file("wall.json");
    std::vector<std::thread> writers;
    for (char letter = 'a'; letter < 'e'; ++letter)
        writers.emplace_back([&path, letter] {
            for (int i = 0; i < 20; ++i)
                static_cast<void>(write_file(path, std::string(50'000, letter)));
        });
    for (std::thread& writer : writers)
        writer.join();
    const std::string left = read_whole(path);
    CHECK(left == std::string(50'000, left.at(0)));
    CHECK(files_in(folder.path()) == 1);
}

TEST_CASE("A device is written to, never replaced") {
    CHECK(write_file("/dev/null", "gone"));
    CHECK(fs::is_character_file("/dev/null"));
    CHECK(fails_with("/dev/full",
                     "cannot be written: No space left on device; make room on the disk"));
}

}  // namespace wallwright::store
