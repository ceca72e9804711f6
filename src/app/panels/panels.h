// The panels of the window, one file each. A panel reads the state, shows it, and changes it by the
// functions of the floors below.
#pragma once

#include "app/state.h"
#include "app/ui.h"

namespace wallwright::app {

/// px at a scale of 1; both bars take the whole width of the window they are called in.
inline constexpr float kTopBarHeight = 44;
inline constexpr float kStatusBarHeight = 28;

/// The whole window: bars, canvas, column, and what dialog is open.
void parts(Ui& ui, State& state);

/// Left to right: the wall's title and whether it is saved, the file menu, the five steps, undo and
/// redo, units, appearance, help.
void top_bar(Ui& ui, State& state);
/// Under the canvas: where the pointer is, how many pieces, the gap, a notice.
void status_bar(Ui& ui, State& state);

/// The column at the right, from top to bottom: the selection or else what the step is about, then
/// the findings.
void column(Ui& ui, State& state);
void room_panel(Ui& ui, State& state);         ///< Nothing selected, step room.
void pieces_panel(Ui& ui, State& state);       ///< Nothing selected, step pieces.
void arrange_panel(Ui& ui, State& state);      ///< Nothing selected, step arrange.
void hang_panel(Ui& ui, State& state);         ///< Nothing selected, step hang.
void piece_panel(Ui& ui, State& state);        ///< One piece selected.
void several_panel(Ui& ui, State& state);      ///< Several pieces selected.
void thing_panel(Ui& ui, State& state);        ///< Furniture or a fixture selected.
void growth_panel(Ui& ui, State& state);       ///< A section of the step arrange.
void suggestions_panel(Ui& ui, State& state);  ///< Likewise: what to buy next.
void findings_panel(Ui& ui, State& state);

/// What the column says in the step mounts, by the view of the bench: the mount of the selected
/// piece, or all that have one; prints and frames; card.
void mount_panel(Ui& ui, State& state);
void prints_panel(Ui& ui, State& state);
void card_panel(Ui& ui, State& state);

/// Whatever dialog is open, over everything else.
void dialogs(Ui& ui, State& state);
void start_dialog(Ui& ui, State& state, StartDialog& dialog);
void file_dialog(Ui& ui, State& state, FileDialog& dialog);
void keys_dialog(Ui& ui, State& state);
void settings_dialog(Ui& ui, State& state);
void unsaved_dialog(Ui& ui, State& state, UnsavedDialog& dialog);
void recovery_dialog(Ui& ui, State& state, RecoveryDialog& dialog);

/// px that the strip of layouts takes under the canvas: none until it was asked for, and only in
/// the step arrange.
float layouts_height(const Ui& ui, const State& state);
/// Fills what it was given: how the search goes, and a small picture of each layout. The pointer on
/// one shows it on the wall, a click takes it.
void layouts_strip(Ui& ui, State& state);

/// px that the slider of the stages takes under the canvas: none without stages, and only in the
/// step arrange.
float stage_strip_height(const Ui& ui, const State& state);
/// At the cursor, as wide as there is room: today and each stage, and what is true of the one that
/// is shown.
void stage_strip(Ui& ui, State& state);

/// The canvas in what the other panels leave: drawing, pointer, zoom.
void canvas(Ui& ui, State& state);

/// The bench in its stead, in the step mounts: a row of its views, and one of them in what is left,
/// at the cursor.
void bench(Ui& ui, State& state);
/// In the step hang: the same with the wall, the pages, and what is to be done on the day.
void hang_views(Ui& ui, State& state);
/// Each fills `area`, px of the window.
using ScreenArea = geometry::Rect<geometry::Screen>;
void bench_mount(Ui& ui, State& state, const ScreenArea& area);
void bench_prints(Ui& ui, State& state, const ScreenArea& area);
void bench_card(Ui& ui, State& state, const ScreenArea& area);

}  // namespace wallwright::app
