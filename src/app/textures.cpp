#include "app/textures.h"

#include "app/renderer.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <system_error>
#include <utility>
#include <vector>

namespace wallwright::app {

namespace {

constexpr std::size_t kChannels = 4;

std::unique_ptr<sf::Texture> load(const std::filesystem::path& file) {
    sf::Image image;
    if (!image.loadFromFile(file.string()))
        return nullptr;
    auto texture = std::make_unique<sf::Texture>();
    if (!texture->loadFromImage(reduced(image, Textures::kMostSide)))
        return nullptr;
    texture->setSmooth(true);
    texture->generateMipmap();
    return texture;
}

/// The mean of the square of `side` pixels that starts at (x, y), as far as the picture reaches.
std::array<std::uint8_t, kChannels> mean(const sf::Image& image, std::size_t x, std::size_t y,
                                         std::size_t side) {
    const std::size_t right = std::min<std::size_t>(x + side, image.getSize().x);
    const std::size_t bottom = std::min<std::size_t>(y + side, image.getSize().y);
    std::array<std::size_t, kChannels> sums{};
    for (std::size_t row = y; row < bottom; ++row) {
        const sf::Uint8* pixel = image.getPixelsPtr() + kChannels * (row * image.getSize().x + x);
        for (std::size_t i = 0; i < kChannels * (right - x); ++i)
            sums[i % kChannels] += pixel[i];
    }
    const std::size_t count = (right - x) * (bottom - y);
    std::array<std::uint8_t, kChannels> result{};
    for (std::size_t i = 0; i < kChannels; ++i)
        result[i] = static_cast<std::uint8_t>((sums[i] + count / 2) / count);
    return result;
}

}  // namespace

sf::Image reduced(const sf::Image& image, unsigned most_side) {
    const sf::Vector2u size = image.getSize();
    const unsigned side = (std::max(size.x, size.y) + most_side - 1) / most_side;
    if (side <= 1)
        return image;
    const unsigned width = (size.x + side - 1) / side;
    const unsigned height = (size.y + side - 1) / side;
    std::vector<sf::Uint8> pixels;
    pixels.reserve(kChannels * width * height);
    for (std::size_t y = 0; y < height; ++y)
        for (std::size_t x = 0; x < width; ++x)
            for (const std::uint8_t channel : mean(image, side * x, side * y, side))
                pixels.push_back(channel);
    sf::Image smaller;
    smaller.create(width, height, pixels.data());
    return smaller;
}

std::optional<Texture> Textures::find(const std::filesystem::path& file) {
    std::error_code unknown;  // a file that is not there has a time too, the earliest
    const auto found = loaded_.find(file);
    const bool is_known = found != loaded_.end();
    if (!is_known || (!found->second.texture &&
                      found->second.changed != std::filesystem::last_write_time(file, unknown)))
        loaded_[file] = {std::filesystem::last_write_time(file, unknown), load(file)};
    const Loaded& loaded = loaded_[file];
    if (!loaded.texture)
        return std::nullopt;
    const sf::Vector2u size = loaded.texture->getSize();
    return Texture{texture_id(*loaded.texture), static_cast<float>(size.x),
                   static_cast<float>(size.y)};
}

}  // namespace wallwright::app
