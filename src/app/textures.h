// Pictures on the graphics card, by file name.
#pragma once

#include "app/host.h"

#include <SFML/Graphics/Image.hpp>
#include <SFML/Graphics/Texture.hpp>

#include <filesystem>
#include <map>
#include <memory>
#include <optional>

namespace wallwright::app {

/// Needs an open window.
class Textures {
  public:
    /// PNG or JPEG, loaded when it is first asked for; smooth at any size, with sides of at most
    /// kMostSide px. Empty for a file that cannot be read, until another program has changed it.
    std::optional<Texture> find(const std::filesystem::path& file);

    [[nodiscard]] bool has(const std::filesystem::path& file) const {
        return loaded_.count(file) > 0;
    }

    static constexpr unsigned kMostSide = 2048;

  private:
    struct Loaded {
        std::filesystem::file_time_type changed;
        std::unique_ptr<sf::Texture> texture;  ///< Null for a file that cannot be read.
    };
    std::map<std::filesystem::path, Loaded> loaded_;
};

/// The picture with each pixel the mean of a square of pixels, as few as bring its sides down to
/// `most_side`.
sf::Image reduced(const sf::Image& image, unsigned most_side);

}  // namespace wallwright::app
