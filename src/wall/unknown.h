// What a newer or another program wrote into the file and this one does not understand.
#pragma once

#include <map>
#include <string>

namespace wallwright::wall {

/// Keys of a JSON object that this version does not know, each with its value as JSON text, to be
/// written back on saving.
using UnknownKeys = std::map<std::string, std::string>;

}  // namespace wallwright::wall
