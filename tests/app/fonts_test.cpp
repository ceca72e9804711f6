#include "app/fonts.h"

#include "headless.h"

#include <SFML/System/Utf.hpp>
#include <catch2/catch.hpp>

#include <cstring>

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
