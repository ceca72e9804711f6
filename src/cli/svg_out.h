// The boards of mounts as files for a cutting machine.
#pragma once

#include "base/problem.h"
#include "pages/mount_svg.h"

#include <string>
#include <vector>

namespace wallwright::cli {

/// Into the folder, which is made where it is not there. Gives what to tell: "Wrote 3 SVGs into
/// boards/, a board each at true size."
Result<std::string> write_svgs(const std::string& folder,
                               const std::vector<pages::BoardSvg>& boards);

}  // namespace wallwright::cli
