#include "app/folder_list.h"

#include "support/command.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::app;

using Names = std::vector<std::string>;

TEST_CASE(
    "A folder's list holds folders and fitting files in the alphabet's order, nothing hidden") {
    const test::ScratchFolder scratch;
    std::filesystem::create_directory(scratch.file("prints"));
    std::filesystem::create_directory(scratch.file("Frames"));
    std::filesystem::create_directory(scratch.file(".cache"));
    for (const char* name : {"hall.json", "Attic.JSON", "bath.json", "notes.txt", ".old.json"})
        test::write_whole(scratch.file(name), "");
    const FolderList list = list_folder(scratch.path(), Names{".json"});
    CHECK(list.folders == Names{"Frames", "prints"});
    CHECK(list.files == Names{"Attic.JSON", "bath.json", "hall.json"});
    CHECK(list.problem.empty());
}

TEST_CASE("A link whose target is gone does not keep the rest from being listed") {
    const test::ScratchFolder scratch;
    std::filesystem::create_symlink(scratch.file("gone"), scratch.file("a.json"));
    test::write_whole(scratch.file("b.json"), "");
    const FolderList list = list_folder(scratch.path(), Names{".json"});
    CHECK(list.files == Names{"b.json"});
    CHECK(list.problem.empty());
}

TEST_CASE("A folder that cannot be read says why") {
    const test::ScratchFolder scratch;
    const FolderList list = list_folder(scratch.file("gone"), Names{".json"});
    CHECK(list.problem.find("No such file or directory") != std::string::npos);
    CHECK(list.folders.empty());
}

TEST_CASE("Endings count whatever their case") {
    CHECK(has_ending("wall.PNG", Names{".svg", ".png"}));
    CHECK_FALSE(has_ending("wall.png.txt", Names{".svg", ".png"}));
    CHECK_FALSE(has_ending("png", Names{".png"}));
}
