// The stages of growth to look at, one after the other, without changing the wall.
#pragma once

#include "arrange/grow.h"
#include "desk/session.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

struct StageFacts {
    std::vector<wall::PieceId> adds;  ///< What goes up in it.
    double score = 0;                 ///< 0 to 100, of the wall after it.
    /// How finished it looks, 1 at best; known of stages as a search of this session left them.
    std::optional<double> finished;
    std::optional<double> to_target;  ///< mm; nothing without a target.
};

/// Shows a stage as a preview of the session: no step, and nothing of it in the file. Whatever else
/// changes what is shown ends it, and so does selecting something, as that is to be edited.
class StageView {
  public:
    /// From 0, today, to the last stage; 0 when the wall has no stages.
    [[nodiscard]] static int last(const Session& session) {
        return arrange::last_stage(session.kept());
    }
    /// The last stage is the wall itself.
    [[nodiscard]] int at(const Session& session) const { return shown_.value_or(last(session)); }
    /// True while an earlier stage is shown in the wall's place.
    [[nodiscard]] bool is_shown() const { return shown_.has_value(); }

    /// The nearest stage that there is.
    void show(Session& session, int stage);
    /// The wall itself again.
    void leave(Session& session);

    /// From today, or from the stage that is shown, one stage a second. Times in s.
    void play(Session& session, double now);
    void pause() { next_at_.reset(); }
    [[nodiscard]] bool is_playing() const { return next_at_.has_value(); }
    /// s until the next stage is due; nothing while it is not playing.
    [[nodiscard]] std::optional<double> due_in(double now) const;

    /// Notices when something else is shown, and goes on with the play.
    void follow(Session& session, double now);

    /// Of each stage from 0 on; worked out once for a state of the wall. `growth` is that of the
    /// last search, may be null.
    const std::vector<StageFacts>& facts(const Session& session, const arrange::Growth* growth);

    bool has_keys = false;  ///< The slider was used last, so arrow keys are for it.

  private:
    void step(Session& session, int stage);

    std::optional<int> shown_;
    std::uint64_t version_ = 0;  ///< Of the session while the stage is shown.
    std::optional<double> next_at_;
    std::vector<StageFacts> facts_;
    std::uint64_t facts_version_ = 0;
};

}  // namespace wallwright::desk
