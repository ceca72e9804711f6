#include "store/preferences.h"

#include "support/command.h"

#include <catch2/catch.hpp>

namespace wallwright::store {

using test::ScratchFolder;
using test::write_whole;

TEST_CASE("Settings are read as they were written, in a folder that is made for them") {
    const ScratchFolder folder;
    const std::filesystem::path file = folder.file("new/folder/settings.json");
    const Preferences preferences{true, 1.25, {"/a/wall.json", "/b/Tür.json"}};
    REQUIRE(write_preferences(file, preferences));
    CHECK(read_preferences(file) == preferences);
}

TEST_CASE("Settings that are not there or make no sense are the usual ones") {
    const ScratchFolder folder;
    CHECK(read_preferences(folder.file("none.json")) == Preferences{});
    for (const char* text :
         {"", "{", "[1]", "{\"dark\": 1, \"text_scale\": \"big\", \"recent\": 3}",
          "{\"recent\": [1, null]}"}) {
        write_whole(folder.file("settings.json"), text);
        CHECK(read_preferences(folder.file("settings.json")) == Preferences{});
    }
    write_whole(folder.file("settings.json"), "{\"text_scale\": 90, \"dark\": true}");
    CHECK(read_preferences(folder.file("settings.json")).text_scale == Preferences::kMostScale);
    CHECK(read_preferences(folder.file("settings.json")).dark);
}

TEST_CASE("A recent file whose name is not UTF-8 does not spoil the settings") {
    const ScratchFolder folder;
    REQUIRE(write_preferences(folder.file("settings.json"),
                              {true, 1, {"/wall\xff.json", "/wall.json"}}));
    CHECK(read_preferences(folder.file("settings.json")) == Preferences{true, 1, {"/wall.json"}});
}

TEST_CASE("The newest ten files are remembered, each once") {
    Preferences preferences;
    for (int i = 0; i < 12; ++i)
        remember(preferences, "/wall" + std::to_string(i) + ".json");
    remember(preferences, "/wall5.json");
    REQUIRE(preferences.recent.size() == Preferences::kMostRecent);
    CHECK(preferences.recent[0] == "/wall5.json");
    CHECK(preferences.recent[1] == "/wall11.json");
    CHECK(preferences.recent[9] == "/wall2.json");
}

}  // namespace wallwright::store
