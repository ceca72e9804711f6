#include "pages/theme.h"

#include <iterator>

namespace wallwright::pages {

namespace {

/// In the order of draw::Ink; the last stands for a colour that the paint brings along.
constexpr wall::Colour kInks[] = {
    {0xFF, 0xFF, 0xFF},  // paper
    {0x2B, 0x2A, 0x28},  // outline
    {0x42, 0x41, 0x3E},  // dimension
    {0x0B, 0x58, 0x5E},  // accent
    {0x4A, 0x48, 0x45},  // hidden
    {0x1F, 0x1E, 0x1C},  // text
    {0x55, 0x53, 0x4E},  // quiet text
    {0xA0, 0x1E, 0x1A},  // mark
    {0xA0, 0x1E, 0x1A},  // stop
    {0x7A, 0x4A, 0x00},  // mind
    {0x25, 0x5C, 0x36},  // good
    {0xEC, 0xE3, 0xD3},  // floor
    {0x00, 0x00, 0x00},  // shade
};

static_assert(std::size(kInks) == static_cast<std::size_t>(draw::Ink::own));

}  // namespace

wall::Colour colour_of(const draw::Paint& paint) {
    return paint.ink == draw::Ink::own ? paint.colour : kInks[static_cast<std::size_t>(paint.ink)];
}

}  // namespace wallwright::pages
