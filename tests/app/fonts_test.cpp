#include "app/fonts.h"

#include "headless.h"
#include "person.h"

#include <SFML/System/Utf.hpp>
#include <catch2/catch.hpp>
#include <fontconfig/fontconfig.h>

#include <cmath>
#include <cstring>
#include <filesystem>

using namespace wallwright;
using namespace wallwright::app;

namespace {

/// Sentences with all letters of their languages, and what the app itself writes.
constexpr const char* kTexts[] = {
    "Quizdeltagerne spiste jordbær med fløde, mens cirkusklovnen Wolther spillede på xylofon ÆØÅ",
    "Zwölf Boxkämpfer jagen Viktor quer über den großen Sylter Deich ÄÖÜẞ",
    "Portez ce vieux whisky au juge blond qui fume ÀÂÇÉÈÊËÎÏÔŒÙÛÜŸ àâçéèêëîïôœùûüÿ",
    "El pingüino Wenceslao hizo kilómetros ÁÉÍÑÓÚÜ ¿¡",
    "Luís argüia à Júlia que «brações, fé, chá, óxido, pôr, zângão» eram palavras ÃÕ",
    "Příliš žluťoučký kůň úpěl ďábelské ódy ŽŠČŘĎŤŇĚŮ",
    "Pchnąć w tę łódź jeża lub ośm skrzyń fig ĄĆĘŁŃÓŚŹŻ",
    "Árvíztűrő tükörfúrógép ÁÉÍÓÖŐÚÜŰ",
    "Muzicologă în bej vând whisky și tequila, preț fix ĂÂÎȘȚ",
    "Įlinkdama fechtuotojo špaga sublykčiojusi pragręžė apvalų arbūzą ĄČĘĖĮŠŲŪŽ",
    "Glāžšķūņa rūķīši dzērumā čiepj Baha koncertflīģeļu vākus ĒĢĪĶĻŅŌŖ",
    "Pijamalı hasta yağız şoföre çabucak güvendi İĞŞ",
    "Kæmi ný öxi hér ykist þjófum nú bæði víl og ádrepa ÞÐ",
    "Ġuġ ħobż żgħir ĊĠĦŻ",
    "Ξεσκεπάζω την ψυχοφθόρα βδελυγμία ΆΈΉΊΌΎΏ ΐΰ",
    "Съешь же ещё этих мягких французских булок, да выпей чаю ЁЪЫЭ",
    "Жебракують філософи при ґанку церкви в Гадячі ҐЄІЇ",
    "Љубазни фењерџија чађавог лица хоће да ми покаже штос ЂЈЉЊЋЏ",
    "16 1⁄2 ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ ⅓ ⅔ ′ ″ × ± ° µ ² ← ↑ → ↓ − ≤ ≥ ≠ € № – — … “ ” ‘ ’ „ « » • †",
};

std::vector<const ImFont*> all_of(const Fonts& fonts) {
    return {fonts.body, fonts.bold, fonts.small, fonts.title, fonts.tiny, fonts.tiny_bold};
}

/// A font of this system with the letters of Europe.
std::string font_of_this_system() {
    FcPattern* wish = FcNameParse(reinterpret_cast<const FcChar8*>("DejaVu Sans"));
    FcConfigSubstitute(nullptr, wish, FcMatchPattern);
    FcDefaultSubstitute(wish);
    FcResult result = FcResultMatch;
    FcPattern* font = FcFontMatch(nullptr, wish, &result);
    FcChar8* path = nullptr;
    FcPatternGetString(font, FC_FILE, 0, &path);
    std::string file = reinterpret_cast<const char*>(path);
    FcPatternDestroy(font);
    FcPatternDestroy(wish);
    return file;
}

/// A system with two fonts, each a link to a file of its own.
class TwoFonts {
  public:
    TwoFonts()
        : font_(font_of_this_system()), config_("FONTCONFIG_FILE", folder_.file("fonts.conf")) {
        test::write_whole(folder_.file("fonts.conf"),
                          "<fontconfig><dir>" + folder_.file("fonts") + "</dir><cachedir>" +
                              folder_.file("memory") + "</cachedir></fontconfig>");
        std::filesystem::create_directory(folder_.file("fonts"));
        for (const char* name : {"one.ttf", "two.ttf"}) {
            std::filesystem::copy_file(font_, target(name));
            std::filesystem::create_symlink(target(name), folder_.file("fonts/") + name);
        }
    }
    [[nodiscard]] std::string target(const std::string& name) const { return folder_.file(name); }

  private:
    std::string font_;  ///< Found before there are only two.
    test::ScratchFolder folder_;
    OwnVariable config_;
};

}  // namespace

TEST_CASE("Every letter of European texts, fractions and arrows has a glyph in every face") {
    const Headless app;
    const std::vector<const ImFont*> fonts = all_of(app.ui.fonts);
    for (const char* text : kTexts) {
        const char* end = text + std::strlen(text);
        for (const char* at = text; at < end;) {
            sf::Uint32 letter = 0;
            at = sf::Utf8::decode(at, end, letter);
            for (const ImFont* font : fonts) {
                INFO("letter U+" << std::hex << letter << " of: " << text);
                CHECK(font->FindGlyphNoFallback(static_cast<ImWchar>(letter)) != nullptr);
            }
        }
    }
}

TEST_CASE("Faces are as large as their scale says") {
    const float scale = GENERATE(1.0F, 2.0F);
    const Headless app({1280, 800}, scale);
    CHECK(app.ui.fonts.body->FontSize == kBodyPixels * scale);
    CHECK(app.ui.fonts.bold->FontSize == kBodyPixels * scale);
    CHECK(app.ui.fonts.title->FontSize > app.ui.fonts.body->FontSize);
    CHECK(app.ui.fonts.small->FontSize < app.ui.fonts.body->FontSize);
    CHECK(app.ui.fonts.capitals > 0.5F);
    CHECK(app.ui.fonts.capitals < 0.8F);
}

TEST_CASE("The semibold face is another than the regular one") {
    const Headless app;
    const char* words = "Hanging";
    CHECK(app.ui.fonts.bold->CalcTextSizeA(16, 1000, 0, words).x !=
          app.ui.fonts.body->CalcTextSizeA(16, 1000, 0, words).x);
}

TEST_CASE("A font that the system lists and that is gone gives way to the next") {
    const Headless app;  // First: its letters are shared with other tests.
    const TwoFonts system;
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    const auto has_letter = [](const Fonts& fonts) {
        return fonts.body->FindGlyphNoFallback(0x017E) != nullptr;
    };
    ImFontAtlas own;
    ImGui::GetIO().Fonts = &own;
    CHECK(has_letter(build_fonts(1)));  // fontconfig remembers both from here on.
    const std::string gone = GENERATE("one.ttf", "two.ttf");
    std::filesystem::remove(system.target(gone));
    CHECK(has_letter(build_fonts(1)));
    std::filesystem::remove(system.target(gone == "one.ttf" ? "two.ttf" : "one.ttf"));
    CHECK(build_fonts(1).body != nullptr);
    CHECK(own.IsBuilt());
    ImGui::GetIO().Fonts = &atlas;
}

TEST_CASE("A font that is spoilt does not leave the window without letters") {
    const Headless app;  // First: its letters are shared with other tests.
    const TwoFonts system;
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    ImFontAtlas own;
    ImGui::GetIO().Fonts = &own;
    build_fonts(1);
    for (const char* name : {"one.ttf", "two.ttf"})
        test::write_whole(system.target(name), "no font");
    const Fonts fonts = build_fonts(1);
    CHECK(own.IsBuilt());
    CHECK(fonts.body->FindGlyphNoFallback('H') != nullptr);
    ImGui::GetIO().Fonts = &atlas;
}

TEST_CASE("Letters too large for a texture are built smaller, and so much as is needed") {
    const Headless app;
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    ImFontAtlas own;
    ImGui::GetIO().Fonts = &own;
    const Fonts fonts = build_fonts(2, 1024);
    CHECK(own.TexWidth <= 1024);
    CHECK(own.TexHeight <= 1024);
    CHECK(fonts.scale < 2);
    CHECK(fonts.scale >= 0.5F);
    CHECK(fonts.body->FontSize == std::round(kBodyPixels * fonts.scale));
    CHECK(build_fonts(1).scale == 1);
    ImGui::GetIO().Fonts = &atlas;
}
