#include "app/canvas_text.h"

#include <algorithm>
#include <cfloat>
#include <cmath>

namespace wallwright::app {

namespace {

using geometry::Wall;

constexpr float kLeastSize = 7;        // px; smaller letters cannot be read
constexpr float kLeastOnPaper = 3.5F;  // px; smaller ones are not even a shape
constexpr float kNearEnough = 0.1F;    // share of a size that may be changed for sharp letters

float share_left(draw::Align align) {
    switch (align) {
        case draw::Align::left:
            return 0;
        case draw::Align::centre:
            return 0.5F;
        case draw::Align::right:
            return 1;
    }
    return 0;
}

/// One line, as on the pages: a name may hold anything.
const std::string& on_one_line(const std::string& text, std::string& room) {
    const auto is_control = [](char letter) {
        return static_cast<unsigned char>(letter) < 0x20 || letter == 0x7F;
    };
    if (std::none_of(text.begin(), text.end(), is_control))
        return text;
    room = text;
    std::replace_if(room.begin(), room.end(), is_control, ' ');
    return room;
}

}  // namespace

TextLook CanvasText::look_of(const draw::Text<Wall>& text) const {
    ImFont* const regular[] = {fonts_.tiny, fonts_.small, fonts_.body};
    ImFont* const bold[] = {fonts_.tiny_bold, fonts_.bold, fonts_.title};
    const float wanted = static_cast<float>(text.size * pixels_per_paper_mm_) / fonts_.capitals;
    TextLook look;
    if (wanted < (on_paper_ ? kLeastOnPaper : kLeastSize))
        return look;
    const auto apart = [wanted](const ImFont* font) {
        return std::abs(std::log(font->FontSize / wanted));
    };
    look.font = *std::min_element(
        text.bold ? std::begin(bold) : std::begin(regular),
        text.bold ? std::end(bold) : std::end(regular),
        [&apart](const ImFont* a, const ImFont* b) { return apart(a) < apart(b); });
    look.size = !on_paper_ && apart(look.font) < kNearEnough ? look.font->FontSize : wanted;
    look.capitals = look.size * fonts_.capitals;
    std::string room;
    const std::string& line = on_one_line(text.text, room);
    look.width =
        look.font->CalcTextSizeA(look.size, FLT_MAX, 0, line.data(), line.data() + line.size()).x;
    return look;
}

ImVec4 CanvasText::box_of(const draw::Text<Wall>& text, const TextLook& look, ImVec2 at,
                          float air) {
    const float start = -share_left(text.align) * look.width - air;
    const float end = start + look.width + 2 * air;
    const float top = look.capitals + air;
    if (text.upward)
        return {at.x - top, at.y - end, at.x + air, at.y - start};
    return {at.x + start, at.y - top, at.x + end, at.y + air};
}

void CanvasText::paint(ImDrawList& list, const draw::Text<Wall>& text, const TextLook& look,
                       ImVec2 at, ImU32 colour) {
    const ImVec4 anywhere{-FLT_MAX, -FLT_MAX, FLT_MAX, FLT_MAX};
    const float base = std::round(look.font->Ascent * look.size / look.font->FontSize);
    const ImVec2 origin{std::round(at.x), std::round(at.y)};
    const ImVec2 start{std::round(origin.x - share_left(text.align) * look.width), origin.y - base};
    std::string room;
    const std::string& line = on_one_line(text.text, room);
    const int first = list.VtxBuffer.Size;
    look.font->RenderText(&list, look.size, start, colour, anywhere, line.data(),
                          line.data() + line.size());
    if (!text.upward)
        return;
    for (int i = first; i < list.VtxBuffer.Size; ++i) {
        ImVec2& corner = list.VtxBuffer[i].pos;
        corner = {origin.x + (corner.y - origin.y), origin.y - (corner.x - origin.x)};
    }
}

}  // namespace wallwright::app
