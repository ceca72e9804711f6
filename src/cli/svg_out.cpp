#include "cli/svg_out.h"

#include "store/files.h"

#include <fmt/format.h>

#include <filesystem>
#include <system_error>

namespace wallwright::cli {

Result<std::string> write_svgs(const std::string& folder,
                               const std::vector<pages::BoardSvg>& boards) {
    if (boards.empty())
        return fail({"--svg", "no mount is to be cut", "give a piece a mount and a print", ""});
    std::error_code failed;
    std::filesystem::create_directories(folder, failed);
    if (failed)
        return fail({folder, fmt::format("the folder cannot be made: {}", failed.message()),
                     "name another one", ""});
    for (const pages::BoardSvg& board : boards)
        if (const auto saved =
                store::write_file(std::filesystem::path(folder) / board.name, board.svg);
            !saved)
            return fail(saved.error());
    return fmt::format("Wrote {} into {}, a board each at true size.\n",
                       boards.size() == 1 ? "1 SVG" : fmt::format("{} SVGs", boards.size()),
                       folder);
}

}  // namespace wallwright::cli
