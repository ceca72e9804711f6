#include "edits/card.h"
#include "edits/sound.h"
#include "wall/find_in.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::edits {

using wall::KeptBlank;
using wall::PieceId;
using wall::Project;

namespace {

auto of_layer(const PieceId& piece, int layer) {
    return
        [&piece, layer](const KeptBlank& one) { return one.piece == piece && one.layer == layer; };
}

bool is_loose(const Project& project, const KeptBlank& kept) {
    const wall::Piece* piece = find(project, kept.piece);
    if (piece == nullptr || !piece->mount || piece->mount_cut ||
        find(project, kept.sheet) == nullptr)
        return true;
    const wall::Mount* mount = find(project, *piece->mount);
    return mount == nullptr || static_cast<std::size_t>(kept.layer) > 1 + mount->under.size();
}

}  // namespace

Result<Project> keep_blank(Project project, KeptBlank kept) {
    const auto before = std::find_if(project.kept_blanks.begin(), project.kept_blanks.end(),
                                     of_layer(kept.piece, kept.layer));
    if (before == project.kept_blanks.end()) {
        project.kept_blanks.push_back(std::move(kept));
    } else {
        kept.unknown.insert(before->unknown.begin(), before->unknown.end());
        *before = std::move(kept);
    }
    return sound(std::move(project));
}

Result<Project> free_blank(Project project, const PieceId& piece, int layer) {
    if (std::erase_if(project.kept_blanks, of_layer(piece, layer)) == 0)
        return fail({"kept_blanks",
                     fmt::format("layer {} of \"{}\" is not kept anywhere", layer, piece.text),
                     "name one that is", ""});
    return sound(std::move(project));
}

void cut_anew(Project& project, const wall::MountId& mount) {
    for (wall::Piece& piece : project.pieces)
        if (piece.mount == mount)
            piece.mount_cut = false;
}

void cut_anew(Project& project, const wall::PrintId& print) {
    const wall::Print* const one = find(project, print);
    for (wall::Piece& piece : project.pieces) {
        const std::vector<const wall::Print*> prints = prints_in(project, piece);
        if (std::find(prints.begin(), prints.end(), one) != prints.end())
            piece.mount_cut = false;
    }
}

void cut_anew(Project& project, const wall::FrameId& frame) {
    for (wall::Piece& piece : project.pieces)
        if (piece.frame == frame)
            piece.mount_cut = false;
}

void drop_loose_blanks(Project& project) {
    std::erase_if(project.kept_blanks,
                  [&project](const KeptBlank& kept) { return is_loose(project, kept); });
}

}  // namespace wallwright::edits
