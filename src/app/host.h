// What the app needs from the outside: pictures as textures, the window's title. A window gives it
// in life, a stand-in in tests.
#pragma once

#include <imgui.h>

#include <filesystem>
#include <optional>
#include <string>

namespace wallwright::app {

struct Texture {
    ImTextureID id = nullptr;
    float width = 0;  ///< px
    float height = 0;
};

class Host {
  public:
    Host() = default;
    Host(const Host&) = delete;
    Host& operator=(const Host&) = delete;
    virtual ~Host() = default;

    /// The picture of a PNG or JPEG file, loaded once; empty when it cannot be read.
    virtual std::optional<Texture> texture(const std::filesystem::path& file) = 0;
    virtual void set_title(const std::string& title) = 0;
};

}  // namespace wallwright::app
