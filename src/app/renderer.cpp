#include "app/renderer.h"

#include <SFML/OpenGL.hpp>

#include <cmath>
#include <cstdint>

namespace wallwright::app {

namespace {

void set_projection(const ImDrawData& data) {
    const double left = data.DisplayPos.x;
    const double top = data.DisplayPos.y;
    glViewport(0, 0, static_cast<int>(data.DisplaySize.x), static_cast<int>(data.DisplaySize.y));
    glMatrixMode(GL_PROJECTION);
    glLoadIdentity();
    glOrtho(left, left + double{data.DisplaySize.x}, top + double{data.DisplaySize.y}, top, -1, 1);
    glMatrixMode(GL_MODELVIEW);
    glLoadIdentity();
    glMatrixMode(GL_TEXTURE);
    glLoadIdentity();
}

void set_state() {
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_FALSE);  // The window itself stays opaque.
    glDisable(GL_CULL_FACE);
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_LIGHTING);
    glEnable(GL_SCISSOR_TEST);
    glEnable(GL_TEXTURE_2D);
    glEnableClientState(GL_VERTEX_ARRAY);
    glEnableClientState(GL_TEXTURE_COORD_ARRAY);
    glEnableClientState(GL_COLOR_ARRAY);
}

void paint(const ImDrawList& list, const ImDrawCmd& command, const ImDrawData& data) {
    const int left = static_cast<int>(command.ClipRect.x - data.DisplayPos.x);
    const int top = static_cast<int>(command.ClipRect.y - data.DisplayPos.y);
    const int right = static_cast<int>(command.ClipRect.z - data.DisplayPos.x);
    const int bottom = static_cast<int>(command.ClipRect.w - data.DisplayPos.y);
    if (right <= left || bottom <= top)
        return;
    glScissor(left, static_cast<int>(data.DisplaySize.y) - bottom, right - left, bottom - top);
    glBindTexture(GL_TEXTURE_2D,
                  static_cast<GLuint>(reinterpret_cast<std::uintptr_t>(command.GetTexID())));
    const ImDrawVert* corners = list.VtxBuffer.Data + command.VtxOffset;
    glVertexPointer(2, GL_FLOAT, sizeof(ImDrawVert), &corners->pos);
    glTexCoordPointer(2, GL_FLOAT, sizeof(ImDrawVert), &corners->uv);
    glColorPointer(4, GL_UNSIGNED_BYTE, sizeof(ImDrawVert), &corners->col);
    glDrawElements(GL_TRIANGLES, static_cast<int>(command.ElemCount), GL_UNSIGNED_SHORT,
                   list.IdxBuffer.Data + command.IdxOffset);
}

}  // namespace

void Renderer::upload_fonts() {
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    unsigned char* pixels = nullptr;
    int width = 0;
    int height = 0;
    atlas.GetTexDataAsRGBA32(&pixels, &width, &height);
    font_.create(static_cast<unsigned>(width), static_cast<unsigned>(height));
    font_.update(pixels);
    font_.setSmooth(true);
    atlas.SetTexID(texture_id(font_));
    atlas.ClearTexData();
}

void Renderer::paint(sf::RenderTarget& target, const ImDrawData& data) {
    if (data.DisplaySize.x <= 0 || data.DisplaySize.y <= 0)
        return;
    target.pushGLStates();
    set_projection(data);
    set_state();
    for (int i = 0; i < data.CmdListsCount; ++i)
        for (const ImDrawCmd& command : data.CmdLists[i]->CmdBuffer)
            app::paint(*data.CmdLists[i], command, data);
    target.popGLStates();
}

ImTextureID texture_id(const sf::Texture& texture) {
    return reinterpret_cast<ImTextureID>(std::uintptr_t{texture.getNativeHandle()});
}

}  // namespace wallwright::app
