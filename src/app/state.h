// All that the window shows: the session and what surrounds it.
#pragma once

#include "app/folder_list.h"
#include "app/hang/page_preview.h"
#include "desk/bench/bench.h"
#include "desk/bench/card_view.h"
#include "desk/bench/match_view.h"
#include "desk/bench/mount_picture.h"
#include "desk/bench/mount_tool.h"
#include "desk/documents.h"
#include "desk/growth_choice.h"
#include "desk/hang/companion.h"
#include "desk/hang_view.h"
#include "desk/layout_choice.h"
#include "desk/pointer_tool.h"
#include "desk/score_card.h"
#include "desk/session.h"
#include "desk/stage_view.h"
#include "desk/step.h"
#include "desk/suggestions.h"
#include "desk/view.h"
#include "desk/wall_picture.h"
#include "draw/drawing.h"

#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace wallwright::app {

/// The guided start of a new wall.
struct StartDialog {
    desk::Start start;
    std::string problem;
};

/// Our own list of a folder, since there is none in the toolkit.
struct FileDialog {
    enum class For {
        open,
        save,
        import_frames,
        picture,
        sheets,
        elevation,
        marks,
        card_plan,
        cutting_sheets,
        plan_and_cutting,
        chosen_sheets
    };
    For what = For::open;
    std::string title;   ///< "Open a wall".
    std::string action;  ///< On the button: "Open".
    std::filesystem::path folder;
    std::string name;                  ///< As typed.
    std::vector<std::string> endings;  ///< ".json"; what is listed, and what a new name gets.
    std::string problem;
    bool asked_to_replace = false;  ///< The next press of the button writes over the file.
    FolderList list;                ///< Of `folder`, once it was read.
    bool wants_keyboard = true;     ///< Its name is to be typed at once.
};

struct KeysDialog {};
struct SettingsDialog {};
/// "There is work that is not saved": before the action that would lose it.
struct UnsavedDialog {
    enum class Then { quit, start, open, open_recent, demo };
    Then then = Then::quit;
    std::filesystem::path file;  ///< For open_recent.
};
struct RecoveryDialog {
    std::vector<desk::Recovery::Found> found;
};

using Dialog = std::variant<std::monostate, StartDialog, FileDialog, KeysDialog, SettingsDialog,
                            UnsavedDialog, RecoveryDialog>;

/// The problem that was told in the last frame, and what there was to see then.
struct ToldProblem {
    std::string text;  ///< Empty for none.
    desk::Step step = desk::Step::arrange;
    desk::BenchView view = desk::BenchView::mount;
    desk::HangView hang = desk::HangView::wall;
    std::uint64_t wall = 0;  ///< The session's kept version.
};

/// The wall on the day as it was drawn last, and how one looks at it.
struct DayPicture {
    draw::WallDrawing drawing;
    std::uint64_t version = 0;  ///< Of the companion; 0 before the first.
    double scale = 0;           ///< mm on paper for a mm of wall.
    desk::Look look{};
};

struct State {
    desk::Session session;
    desk::Preferences preferences;
    desk::Step step = desk::Step::arrange;
    desk::View view{};
    /// The whole wall is kept in sight, however it changes, until the person zooms or pans.
    bool fitted = true;
    /// For which state it was fitted last: version, step, text scale, the canvas in px, and how far
    /// the search for layouts is.
    std::array<double, 8> fitted_for{};
    desk::PointerTool pointer{};
    desk::WallPicture picture{};
    desk::HangView hang_view = desk::HangView::wall;
    desk::HangLayers layers{};
    PagePreview preview{};
    desk::Companion day{};
    DayPicture day_picture{};
    desk::Bench bench{};
    desk::MountTool mount_tool{};
    desk::MountPicture mount_picture{};
    desk::MatchView prints{};
    desk::CardView card{};
    desk::LayoutChoice layouts{};
    std::optional<std::size_t> layout_pointed_at{};  ///< The pointer is on the one of this rank.
    desk::ScoreCard score{};
    desk::GrowthChoice growth{};
    desk::StageView stages{};
    desk::Suggestions suggestions{};
    Dialog dialog{};
    /// Menus, lists and dialogs that were open in the last frame, one over the other. ImGui puts
    /// them away by Escape before the key is told to anybody else.
    int popups = 0;
    bool type_wanted = false;  ///< The column's first field is to have the keyboard.
    std::string key_later{};   ///< To be done once what is being typed has been taken in.
    double last_key = 0;       ///< ImGui's time of it, s.
    bool quit = false;         ///< The loop ends after this frame.
    std::optional<wall::PieceId> picture_for{};  ///< Whom the chosen picture is for.
    /// Where the pointer is on the wall, when it is over the canvas.
    std::optional<geometry::Point<geometry::Wall>> pointer_at{};
    ToldProblem told_problem{};
    std::filesystem::path last_folder{};          ///< In which a file was chosen last.
    std::optional<UnsavedDialog> after_saving{};  ///< What goes on once the work is saved.
    bool other_session = false;  ///< show() has put another there: forget the recovery of the last.
    /// Work that was brought back: its recovery goes once the session's own holds it.
    std::vector<desk::Recovery::Found> brought_back{};
};

}  // namespace wallwright::app
