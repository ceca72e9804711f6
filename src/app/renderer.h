// Dear ImGui's drawing commands to the graphics card, by OpenGL 1.1: the packaged painters either
// give up at 65,535 vertices or write past an array.
#pragma once

#include <SFML/Graphics/RenderTarget.hpp>
#include <SFML/Graphics/Texture.hpp>
#include <imgui.h>

namespace wallwright::app {

/// Of one window that is open and active.
class Renderer {
  public:
    /// The current ImGui context's letters; again whenever they were built anew.
    void upload_fonts();
    /// Paints over what is there and leaves SFML's own state as it was.
    static void paint(sf::RenderTarget& target, const ImDrawData& data);

  private:
    sf::Texture font_;
};

ImTextureID texture_id(const sf::Texture& texture);

}  // namespace wallwright::app
