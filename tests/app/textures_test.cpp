#include "app/textures.h"

#include <catch2/catch.hpp>

using namespace wallwright::app;

TEST_CASE("A picture that is small enough stays as it is") {
    sf::Image image;
    image.create(100, 50, sf::Color::Red);
    CHECK(reduced(image, 100).getSize() == sf::Vector2u(100, 50));
}

TEST_CASE("A large picture is reduced to the means of its pixels") {
    sf::Image image;
    image.create(8, 2, sf::Color::Black);
    for (unsigned x = 0; x < 8; x += 2)
        for (unsigned y = 0; y < 2; ++y)
            image.setPixel(x, y, sf::Color(200, 100, 0));
    const sf::Image smaller = reduced(image, 4);
    REQUIRE(smaller.getSize() == sf::Vector2u(4, 1));
    for (unsigned x = 0; x < 4; ++x)
        CHECK(smaller.getPixel(x, 0) == sf::Color(100, 50, 0));
}

TEST_CASE("A side that the reduction does not divide keeps its last pixels") {
    sf::Image image;
    image.create(7, 3, sf::Color::White);
    image.setPixel(6, 2, sf::Color::Black);
    const sf::Image smaller = reduced(image, 4);
    REQUIRE(smaller.getSize() == sf::Vector2u(4, 2));
    CHECK(smaller.getPixel(3, 1) == sf::Color::Black);
    CHECK(smaller.getPixel(0, 0) == sf::Color::White);
}
