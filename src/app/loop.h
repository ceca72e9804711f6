// From start to end of the window: events in, frames out, and no frame without a cause.
#pragma once

#include "app/frame.h"
#include "app/window.h"

#include <chrono>
#include <filesystem>
#include <memory>

namespace wallwright::app {

struct LoopOptions {
    std::optional<WindowSize> size;
    float display_scale = 1;     ///< Of a window whose size is not given.
    std::filesystem::path shot;  ///< Not empty: the picture of the first whole frame goes here, and
                                 ///< the loop ends.
    bool announce = false;  ///< Tells stdout when the first frame is shown, and about each one and
                            ///< where its items are.
};

/// When the next frame is due, and how long to sleep until it may be.
class Rhythm {
  public:
    using Clock = std::chrono::steady_clock;

    /// Something happened: frames follow, since what opens in one is measured in the next.
    void wake(Clock::time_point now);
    /// True when a frame is to be drawn now; each call takes one.
    bool take_frame(Clock::time_point now);
    /// True when no frame is due but the one that a resting hand may get.
    [[nodiscard]] bool is_still() const { return due_ == 0; }
    [[nodiscard]] std::chrono::milliseconds sleep(Clock::time_point now) const;

  private:
    int due_ = 0;
    Clock::time_point woken_{};
    bool rest_due_ = false;  ///< Tooltips come when the hand has rested.
};

/// Opens the window and shows the frame until it wants to quit. Needs a display (find_display()).
/// Fails when a shot cannot be written.
Outcome run(Frame& frame, const LoopOptions& options);

}  // namespace wallwright::app
