// The five steps of the job, in the order in which a person takes them.
#pragma once

#include <cstdint>

namespace wallwright::desk {

enum class Step : std::uint8_t { room, pieces, mounts, arrange, hang };

}  // namespace wallwright::desk
