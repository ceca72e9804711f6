#include "store/catalogue.h"

#include "support/command.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <regex>
#include <sstream>

namespace wallwright::store {

namespace {

using wall::MaterialId;

std::string complaint(std::string_view text) {
    wall::Catalogue catalogue;
    const Outcome read = read_catalogue(text, "own.json", catalogue);
    return read ? "no complaint" : to_text(read.error());
}

const wall::NamedSize& built_in_size(const std::string& name) {
    const auto& sizes = built_in_catalogue().sizes;
    const auto found = std::find_if(sizes.begin(), sizes.end(),
                                    [&name](const auto& one) { return one.name == name; });
    REQUIRE(found != sizes.end());
    return *found;
}

double middle_density(const std::string& id) {
    const wall::Material* material = find(built_in_catalogue(), MaterialId{id});
    REQUIRE(material != nullptr);
    return (material->density_low + material->density_high) / 2;
}

/// Descriptions ("5x7") to sizes in points, as gutenprint lists them.
std::map<std::string, geometry::Size> gutenprint_papers() {
    const std::string xml = test::read_whole("/usr/share/gutenprint/5.3/xml/papers/standard.xml");
    const std::regex paper(
        R"re(<description translate="value" value="([^"]*)"/>([\s\S]*?)</paper>)re");
    const std::regex width(R"re(<width value="(\d+)")re");
    const std::regex height(R"re(<height value="(\d+)")re");
    std::map<std::string, geometry::Size> papers;
    for (std::sregex_iterator at(xml.begin(), xml.end(), paper); at != std::sregex_iterator();
         ++at) {
        const std::string body = (*at)[2];
        std::smatch w;
        std::smatch h;
        if (std::regex_search(body, w, width) && std::regex_search(body, h, height))
            papers[(*at)[1]] = {std::stod(w[1]), std::stod(h[1])};
    }
    return papers;
}

}  // namespace

TEST_CASE("Each file of the catalogue is read on its own") {
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(WW_SOURCE "/assets/catalogue")) {
        wall::Catalogue catalogue;
        const Outcome read =
            read_catalogue(test::read_whole(entry.path()), entry.path().filename(), catalogue);
        INFO((read ? "" : to_text(read.error())));
        CHECK(read);
        CHECK(catalogue.unknown.empty());
        ++files;
    }
    CHECK(files == 3);
}

TEST_CASE("Every record of the catalogue has a title and says where its numbers are from") {
    const wall::Catalogue& catalogue = built_in_catalogue();
    CHECK(catalogue.materials.size() >= 25);
    CHECK(catalogue.fixings.size() >= 7);
    CHECK(catalogue.sizes.size() >= 50);
    for (const auto& material : catalogue.materials) {
        INFO(material.id.text);
        CHECK_FALSE(material.title.empty());
        CHECK_FALSE(material.source.empty());
        CHECK(material.unknown.empty());
    }
    for (const auto& fixing : catalogue.fixings) {
        INFO(fixing.id.text);
        CHECK_FALSE(fixing.title.empty());
        CHECK_FALSE(fixing.source.empty());
        CHECK(fixing.unknown.empty());
    }
    for (const auto& size : catalogue.sizes) {
        INFO(size.name);
        CHECK_FALSE(size.source.empty());
        CHECK(size.size.width <= size.size.height);
        CHECK(size.unknown.empty());
    }
}

TEST_CASE("Every material that a new frame, mount or print starts with is in the catalogue") {
    const wall::Frame frame;
    for (const MaterialId& id : {frame.moulding, frame.glazing.material, frame.backing.material,
                                 wall::Mount{}.card.material})
        CHECK(find(built_in_catalogue(), id) != nullptr);
}

TEST_CASE("Every material says what it is sold for, among it what a new frame is made of") {
    const wall::Catalogue& catalogue = built_in_catalogue();
    for (const auto& material : catalogue.materials) {
        INFO(material.id.text);
        CHECK_FALSE(material.uses.empty());
    }
    const wall::Frame frame;
    CHECK(suits(*find(catalogue, frame.moulding), wall::MaterialUse::moulding));
    CHECK(suits(*find(catalogue, frame.glazing.material), wall::MaterialUse::glazing));
    CHECK(suits(*find(catalogue, frame.backing.material), wall::MaterialUse::backing));
    CHECK_FALSE(suits(*find(catalogue, MaterialId{"glass"}), wall::MaterialUse::moulding));
    CHECK_FALSE(suits(*find(catalogue, MaterialId{"foam_board"}), wall::MaterialUse::moulding));
    CHECK_FALSE(suits(*find(catalogue, MaterialId{"oak"}), wall::MaterialUse::backing));
}

TEST_CASE("A name in inches or centimetres says its own size") {
    const std::regex name(R"re(([\d.]+)x([\d.]+)(in|cm))re");
    int named = 0;
    for (const auto& size : built_in_catalogue().sizes) {
        std::smatch parts;
        if (!std::regex_match(size.name, parts, name))
            continue;
        INFO(size.name);
        const double unit = parts[3] == "in" ? 25.4 : 10;
        CHECK(size.size.width == Approx(std::stod(parts[1]) * unit));
        CHECK(size.size.height == Approx(std::stod(parts[2]) * unit));
        ++named;
    }
    CHECK(named >= 40);
}

// Outside check: the table of libpaper (Debian libpaper-utils), printed by its own program. It
// lists ledger lying down and has a quarto of its own, neither of which the catalogue names.
TEST_CASE("Paper sizes agree with libpaper") {
    const test::Ran ran = test::run("paperconf -a -n -s -m");
    REQUIRE(ran.status == 0);
    std::istringstream lines(ran.out);
    std::map<std::string, geometry::Size> papers;
    std::string name;
    std::string mm;
    geometry::Size size;
    while (lines >> name >> size.width >> mm >> size.height >> mm)
        papers[name] = size;
    for (const char* known : {"a0", "a1", "a2", "a3", "a4", "a5", "a6", "b0", "b1", "b2", "b3",
                              "b4", "b5", "b6", "letter", "legal", "tabloid"}) {
        INFO(known);
        REQUIRE(papers.contains(known));
        CHECK(built_in_size(known).size.width == Approx(papers[known].width).margin(0.01));
        CHECK(built_in_size(known).size.height == Approx(papers[known].height).margin(0.01));
    }
}

// Outside check: gutenprint's table of papers (Debian libgutenprint-common), whole points of 1/72
// in, rounded down.
TEST_CASE("Photo and frame sizes agree with gutenprint to a point") {
    const auto papers = gutenprint_papers();
    REQUIRE(papers.size() > 100);
    constexpr double kMmPerPoint = 25.4 / 72;
    int found = 0;
    for (const wall::NamedSize& size : built_in_catalogue().sizes) {
        std::string name = size.name.substr(0, size.name.find("in"));
        if (name.size() == size.name.size() || !papers.contains(name))
            continue;
        INFO(size.name);
        const geometry::Size points = papers.at(name);
        CHECK(std::abs(size.size.width - points.width * kMmPerPoint) < 0.36);
        CHECK(std::abs(size.size.height - points.height * kMmPerPoint) < 0.36);
        ++found;
    }
    CHECK(found >= 12);
}

// Outside check: GNU units, whose table of woods comes from a commercial wood database and not from
// the Wood Handbook.
TEST_CASE("Densities agree with GNU units within 5 per cent") {
    const std::pair<const char*, const char*> kPairs[] = {{"beech", "wood_beech"},
                                                          {"lime", "wood_basswood"},
                                                          {"cherry", "wood_cherry"},
                                                          {"oak", "wood_redoak"},
                                                          {"oak", "wood_whiteoak"},
                                                          {"walnut", "wood_walnut"},
                                                          {"maple", "wood_hardmaple"},
                                                          {"poplar", "wood_poplar"},
                                                          {"pine", "wood_ponderosapine"},
                                                          {"spruce", "wood_engelmannspruce"},
                                                          {"douglas_fir", "wood_douglasfir"},
                                                          {"aluminium", "aluminumdensity"}};
    for (const auto& [ours, theirs] : kPairs) {
        INFO(ours << " against " << theirs);
        const test::Ran ran = test::run(std::string("units -t ") + theirs + " kg/m^3");
        REQUIRE(ran.status == 0);
        CHECK(middle_density(ours) == Approx(std::stod(ran.out)).epsilon(0.05));
    }
}

// EN 572-1: 2.5 kg/m2 for each mm of float glass.
TEST_CASE("Glass of 2 mm weighs 5 kg a square metre") {
    CHECK(middle_density("glass") * 0.002 == Approx(5.0));
}

TEST_CASE("The person's own records stand over the built-in ones of the same name") {
    wall::Catalogue own;
    own.fixings.push_back({{"strip_large"},
                           "Mine",
                           wall::FixingKind::strip_pair,
                           wall::Kilograms{2.2},
                           {20, 90},
                           "packet",
                           {}});
    own.sizes.push_back({"a4", {200, 300}, "trimmed", {}});
    own.materials.push_back({{"bamboo"}, "Bamboo", 600, 800, "weighed", {}});
    const wall::Catalogue both = catalogue_for(own);
    CHECK(find(both, wall::FixingTypeId{"strip_large"})->rated.value == 2.2);
    CHECK(find(both, MaterialId{"bamboo"}) != nullptr);
    CHECK(find(both, MaterialId{"oak"}) != nullptr);
    CHECK(std::count_if(both.sizes.begin(), both.sizes.end(),
                        [](const auto& one) { return one.name == "a4"; }) == 1);
}

TEST_CASE("A mistake in a catalogue is named with its record, and nothing of the file is taken") {
    CHECK(complaint(R"({"materials": [{"id": "elm", "density_low_kg_per_m3": 500}]})") ==
          "own.json: materials/elm: \"density_high_kg_per_m3\" is missing; add it");
    CHECK(complaint(R"({"fixings": [{"id": "nail", "kind": "nail"}]})") ==
          "own.json: fixings/nail/kind: must be one of \"strip_pair\", \"nail_hook\", \"screw\", "
          "\"rail_hook\", "
          "got \"nail\"");
    CHECK(complaint(R"({"materials": [{"id": "elm", "density_low_kg_per_m3": 500,
                       "density_high_kg_per_m3": 600, "uses": ["floor"]}]})") ==
          "own.json: materials/elm/uses: must be one of \"moulding\", \"glazing\", \"backing\", "
          "got \"floor\"");
    CHECK(complaint(R"({"materials": [{"id": "elm", "density_low_kg_per_m3": 500,
                       "density_high_kg_per_m3": 600, "uses": "floor"}]})") ==
          "own.json: materials/elm/uses: must be a list in [ ], got \"floor\"");
    CHECK(complaint("{").starts_with("own.json:1: the text ends before its JSON does"));
    wall::Catalogue catalogue;
    const char* upside_down =
        R"({"materials": [{"id": "elm", "density_low_kg_per_m3": 500, "density_high_kg_per_m3": 400}]})";
    CHECK_FALSE(read_catalogue(upside_down, "own.json", catalogue));
    CHECK(catalogue == wall::Catalogue{});
}

}  // namespace wallwright::store
