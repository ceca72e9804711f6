// Walls on the disk: new, open, save, recover, what was open lately.
#pragma once

#include "desk/file_lock.h"
#include "desk/session.h"
#include "store/preferences.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace wallwright::desk {

/// How a new wall begins: lengths in mm.
struct Start {
    std::string title = "My wall";
    units::LengthUnit unit = units::LengthUnit::mm;
    wall::Size wall{3600, 2400};
    wall::Surface surface = wall::Surface::painted;
    struct Stands {
        wall::FurnitureType type = wall::FurnitureType::sofa;
        wall::Size size;
        double left = 0;
    };
    std::vector<Stands> furniture;
    struct Frames {
        wall::Size outside;
        int count = 1;
    };
    std::vector<Frames> frames;  ///< They wait on the floor.
};
Result<wall::Project> new_wall(const Start& start);

/// The demo wall that comes with the program; its pictures' names start from demo_folder().
Result<wall::Project> demo_wall();
/// Where an installed program has it, or else the program's source.
std::filesystem::path demo_folder();

/// Keys of the file that this version does not know are told as a notice; they are kept.
Result<Session> open(const std::filesystem::path& file);
/// What to do about the session's file when another program has changed it meanwhile.
enum class IfChanged { ask, replace };
/// Writes kept() and tells the session so. Names of pictures are written as they read from the
/// file's folder. After a Problem the file and the work are as they were. A file that was changed
/// since it was opened or saved here is a Problem once: saved again, it is replaced.
Outcome save(Session& session, const std::filesystem::path& file,
             IfChanged changed = IfChanged::ask);

/// Frames of a CSV as waiting or placed pieces, as one step; they are selected then.
Outcome import_frames(Session& session, const std::filesystem::path& csv);

/// The state of work that no file holds yet, beside the person's other settings, so that a crash
/// costs nothing. One file for each running program, named with its process id; a lock that the
/// system takes away when the program ends, however it ends, tells who still runs.
class Recovery {
  public:
    explicit Recovery(std::filesystem::path folder);

    /// Writes kept() when it is unsaved and was not written yet; removes the file when it is saved.
    /// Cheap when nothing changed. Before another session is kept, forget() the one before.
    Outcome keep(const Session& session);
    /// The work is saved or given up.
    void forget();

    /// What programs that no longer run left behind, newest first. What cannot be read stays on the
    /// disk and is left out.
    struct Found {
        std::filesystem::path file;  ///< Of the recovery itself.
        wall::Project project;
        std::filesystem::path original;  ///< Where the work belongs; may be empty.
        std::filesystem::path pictures;  ///< Where the names of its pictures start from.
    };
    [[nodiscard]] std::vector<Found> found() const;
    static void discard(const Found& found);

  private:
    Outcome claim_file();

    std::filesystem::path folder_;
    std::filesystem::path file_;  ///< Empty until there is something to keep.
    std::shared_ptr<const FileLock> lock_;
    std::uint64_t written_ = 0;  ///< The session's version; 0 for none.
};

using store::Preferences;
using store::read_preferences;
using store::remember;
using store::write_preferences;

/// Where this person's settings live by the XDG Base Directory Specification: $XDG_CONFIG_HOME or
/// ~/.config for settings, $XDG_STATE_HOME or ~/.local/state for recovery; in a folder wallwright.
std::filesystem::path settings_folder();
std::filesystem::path state_folder();

}  // namespace wallwright::desk
