// Edits of mounts, for every piece that has them: their measures, their windows, who has which.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <functional>
#include <span>

namespace wallwright::edits {

/// Changes a mount for all that have it; its id is not to be changed. The result must be sound.
Result<wall::Project> change_mount_everywhere(wall::Project project, const wall::MountId& id,
                                              const std::function<void(wall::Mount&)>& change);

/// The piece has this mount from now on; its own goes where no other piece has it.
Result<wall::Project> put_mount(wall::Project project, const wall::PieceId& piece,
                                const wall::MountId& mount);
/// A copy of its mount for this piece alone, so that changes leave the others as they are. Nothing
/// changes where no other piece has it; a piece without a mount is a Problem.
Result<wall::Project> own_mount(wall::Project project, const wall::PieceId& piece);
/// A mount for a piece without one, of the measures, boards and colours that most pieces of the
/// wall have, or else the usual ones; with one window where its rule puts it. A piece with a mount
/// stays as it is.
Result<wall::Project> give_mount(wall::Project project, const wall::PieceId& piece);

/// How what is left of the blank above and below the windows is split.
enum class BaseRule { even, wider_by, by_ratio };
/// The borders go by this rule, with so many mm or that ratio, and no window is placed by hand any
/// longer: several that were stand in a row. `amount` is of no matter for even borders.
Result<wall::Project> set_base(wall::Project project, const wall::MountId& mount, BaseRule rule,
                               double amount);

/// One more window in the mount of the piece, for a print that has none there yet. The first
/// further one names the piece's own print for the window that there was. `at` counts where
/// windows are placed by hand. A piece without a mount or a print is a Problem.
Result<wall::Project> add_window(wall::Project project, const wall::PieceId& piece,
                                 const wall::PrintId& print, wall::FromCorner at);
/// Takes the window for this print out. Where one is left and a single piece has the mount, it is
/// that piece's print from then on, in the one window.
Result<wall::Project> remove_window(wall::Project project, const wall::MountId& mount,
                                    const wall::PrintId& print);

/// Every window at its place by hand, in the order of the windows; one place where there is one
/// window. Another number of places is a Problem.
Result<wall::Project> place_windows(wall::Project project, const wall::MountId& mount,
                                    std::span<const wall::FromCorner> at);
/// No window is placed by hand any longer: one goes by the borders' rule, several in that order,
/// which is not by_hand.
Result<wall::Project> release_windows(wall::Project project, const wall::MountId& mount,
                                      wall::WindowOrder order);

}  // namespace wallwright::edits
