#include "store/picture_names.h"

#include "support/command.h"

#include <catch2/catch.hpp>

#include <filesystem>

namespace wallwright::store {

namespace fs = std::filesystem;

namespace {

std::string renamed(const std::string& picture, const fs::path& from, const fs::path& to) {
    wall::Project project;
    wall::Print print;
    print.picture = picture;
    project.prints.push_back(print);
    return with_pictures_from(project, from, to).prints.front().picture;
}

}  // namespace

TEST_CASE("A picture's name reads from the new folder") {
    const test::ScratchFolder folder;
    const fs::path home = folder.path();
    CHECK(renamed("kelp.png", home / "a", home / "a/b") == "../kelp.png");
    CHECK(renamed("../kelp.png", home / "a/b", home / "a") == "kelp.png");
    CHECK(renamed("pictures/kelp.png", home / "a", home / "b") == "../a/pictures/kelp.png");
}

TEST_CASE("In the same folder a picture's name stays to the letter") {
    CHECK(renamed("./x/../kelp.png", "a", "a/../a") == "./x/../kelp.png");
    CHECK(renamed("kelp.png", "", ".") == "kelp.png");
}

TEST_CASE("A full path stays, and no picture stays none") {
    CHECK(renamed("/pictures/kelp.png", "a", "b") == "/pictures/kelp.png");
    CHECK(renamed("", "a", "b").empty());
}

TEST_CASE("The way up leads from where a linked folder really is") {
    const test::ScratchFolder folder;
    const fs::path home = folder.path();
    fs::create_directories(home / "far/deep");
    fs::create_directory_symlink(home / "far/deep", home / "link");
    test::write_whole((home / "kelp.png").string(), "picture");
    const fs::path name = renamed("kelp.png", home, home / "link");
    CHECK(test::read_whole((home / "link" / name).string()) == "picture");
}

}  // namespace wallwright::store
