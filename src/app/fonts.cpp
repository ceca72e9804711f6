#include "app/fonts.h"

#include <fontconfig/fontconfig.h>
#include <imgui_freetype.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <memory>
#include <string>
#include <vector>

namespace wallwright::app {

namespace {

/// ImGui keeps a pointer to it.
constexpr ImWchar kLetters[] = {
    0x0020, 0x007E,  // Latin
    0x00A0, 0x017F,  // and its accents
    0x0218, 0x021B,  // Romanian
    0x02C6, 0x02DD,  // accents alone
    0x0384, 0x03CE,  // Greek
    0x0400, 0x045F,  // Cyrillic
    0x0490, 0x0491,  // Ukrainian
    0x1E9E, 0x1E9E,  // the German capital sharp s
    0x2010, 0x2027,  // dashes, quotation marks, bullets
    0x2030, 0x203A,  // primes for feet and inches
    0x2044, 0x2044,  // the fraction's stroke
    0x20AC, 0x20AC,  // euro
    0x2116, 0x2116,  // numero
    0x2150, 0x215E,  // fractions
    0x2190, 0x2193,  // arrows
    0x2212, 0x2212,  // minus
    0x2260, 0x2265,  // unequal, at most, at least
    0x25A1, 0x25A1,  // for letters that are missing
    0xFFFD, 0xFFFD,  // likewise
    0,
};

template <auto Destroy>
struct Destroyer {
    template <class Thing>
    void operator()(Thing* thing) const {
        Destroy(thing);
    }
};
using Config = std::unique_ptr<FcConfig, Destroyer<FcConfigDestroy>>;
using Pattern = std::unique_ptr<FcPattern, Destroyer<FcPatternDestroy>>;
using FontSet = std::unique_ptr<FcFontSet, Destroyer<FcFontSetDestroy>>;
using CharSet = std::unique_ptr<FcCharSet, Destroyer<FcCharSetDestroy>>;

/// Of the largest face.
constexpr ImWchar kNumbers[] = {0x0020, 0x007E, 0x00B1, 0x00B1, 0};

struct FontFile {
    std::string path;
    int index = 0;
};

CharSet missing_letters() {
    CharSet all(FcCharSetCreate());
    for (const ImWchar* range = kLetters; *range != 0; range += 2)
        for (FcChar32 letter = range[0]; letter <= range[1]; ++letter)
            FcCharSetAddChar(all.get(), letter);
    return all;
}

/// fontconfig also lists from its memory what is gone; ImGui ends the program at such a file.
bool is_readable(const char* path) {
    return std::ifstream(path, std::ios::binary).peek() != std::ifstream::traits_type::eof();
}

FontSet sorted_fonts(FcConfig* config, int weight) {
    const Pattern wish(FcPatternCreate());
    for (const char* family : {"Inter", "Noto Sans", "DejaVu Sans", "sans-serif"})
        FcPatternAddString(wish.get(), FC_FAMILY, reinterpret_cast<const FcChar8*>(family));
    FcPatternAddInteger(wish.get(), FC_WEIGHT, weight);
    FcPatternAddBool(wish.get(), FC_SCALABLE, FcTrue);
    FcConfigSubstitute(config, wish.get(), FcMatchPattern);
    FcDefaultSubstitute(wish.get());
    FcResult result = FcResultMatch;
    return FontSet(FcFontSort(config, wish.get(), FcFalse, nullptr, &result));
}

/// The best face and, where it lacks letters, others that have them.
std::vector<FontFile> files_of(FcConfig* config, int weight) {
    constexpr std::size_t kMostFiles = 3;
    std::vector<FontFile> files;
    const FontSet fonts = sorted_fonts(config, weight);
    CharSet missing = missing_letters();
    for (int i = 0; fonts && i < fonts->nfont && files.size() < kMostFiles; ++i) {
        FcChar8* path = nullptr;
        FcCharSet* has = nullptr;
        int index = 0;
        const FcPattern* font = fonts->fonts[i];
        if (FcPatternGetString(font, FC_FILE, 0, &path) != FcResultMatch ||
            FcPatternGetCharSet(font, FC_CHARSET, 0, &has) != FcResultMatch ||
            FcCharSetIntersectCount(missing.get(), has) == 0 ||
            !is_readable(reinterpret_cast<const char*>(path)))
            continue;
        FcPatternGetInteger(font, FC_INDEX, 0, &index);
        files.push_back({reinterpret_cast<const char*>(path), index});
        missing.reset(FcCharSetSubtract(missing.get(), has));
    }
    return files;
}

ImFont* add(const std::vector<FontFile>& files, float pixels, const ImWchar* letters = kLetters) {
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    ImFont* font = nullptr;
    for (const FontFile& file : files) {
        ImFontConfig config;
        config.FontNo = file.index;
        config.MergeMode = font != nullptr;
        ImFont* added =
            atlas.AddFontFromFileTTF(file.path.c_str(), std::round(pixels), &config, letters);
        font = font == nullptr ? added : font;
    }
    if (font != nullptr)
        return font;
    ImFontConfig config;
    config.SizePixels = std::round(pixels);
    return atlas.AddFontDefault(&config);
}

float capital_share(const ImFont& font) {
    const ImFontGlyph* glyph = font.FindGlyph('H');
    return std::clamp((glyph->Y1 - glyph->Y0) / font.FontSize, 0.4F, 0.9F);
}

struct Faces {
    std::vector<FontFile> regular;
    std::vector<FontFile> semibold;
};

/// False when the letters cannot be drawn, as of a spoilt file.
bool build(Fonts& fonts, const Faces& faces, float scale) {
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    atlas.Clear();
    atlas.FontBuilderIO = ImGuiFreeType::GetBuilderForFreeType();
    fonts.scale = scale;
    fonts.body = add(faces.regular, kBodyPixels * scale);
    fonts.bold = add(faces.semibold, kBodyPixels * scale);
    fonts.small = add(faces.regular, 14 * scale);
    fonts.title = add(faces.semibold, 20 * scale);
    fonts.large = add(faces.semibold, 30 * scale);
    fonts.huge = add(faces.semibold, 88 * scale, kNumbers);
    fonts.tiny = add(faces.regular, 12 * scale);
    fonts.tiny_bold = add(faces.semibold, 12 * scale);
    ImGui::GetIO().FontDefault = fonts.body;
    return atlas.Build();
}

bool fits(int largest) {
    const ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    return atlas.TexWidth <= largest && atlas.TexHeight <= largest;
}

}  // namespace

Fonts build_fonts(float scale, int largest) {
    constexpr float kSmaller = 0.8F;
    constexpr float kLeast = 0.5F;
    const Config config(FcInitLoadConfigAndFonts());
    Faces faces{files_of(config.get(), FC_WEIGHT_REGULAR),
                files_of(config.get(), FC_WEIGHT_DEMIBOLD)};
    Fonts fonts;
    if (!build(fonts, faces, scale)) {
        faces = {};
        build(fonts, faces, scale);
    }
    while (!fits(largest) && fonts.scale > kLeast)
        build(fonts, faces, fonts.scale * kSmaller);
    fonts.capitals = capital_share(*fonts.title);
    return fonts;
}

}  // namespace wallwright::app
