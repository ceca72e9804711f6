// What to buy next, as a list to choose from.
#pragma once

#include "arrange/suggest.h"
#include "desk/background.h"
#include "desk/session.h"
#include "mounts/match/shop_name.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// One a window. The search runs on a thread of its own and is given up when the wall becomes
/// another.
class Suggestions {
  public:
    /// For the next search.
    arrange::SuggestOptions options;

    /// Why there can be no search now, in a few words; empty when there can.
    [[nodiscard]] static std::string hindrance(const Session& session);
    /// There must be no hindrance. Forgets the list.
    void start(const Session& session);
    /// What was found so far is the answer.
    void stop();
    /// Stops, and puts the list away.
    void clear();
    [[nodiscard]] bool is_running() const { return search_ != nullptr; }
    [[nodiscard]] double done() const { return search_ ? search_->done() : 1; }

    /// Takes the answer when it is there, and notices whether the wall is still the one that the
    /// list is about. Tells when the search broke off. True when the list became another.
    bool follow(Session& session);

    /// The best first. Empty while it is about another wall than the session's: what fitted there
    /// need not fit here.
    [[nodiscard]] const std::vector<arrange::Suggestion>& list() const {
        return is_stale_ ? none_ : list_;
    }
    /// Something was found, of a wall that is another now; undoing the change brings it back.
    [[nodiscard]] bool is_stale() const { return is_stale_ && !list_.empty(); }
    /// A search came to its end and found nothing for this wall.
    [[nodiscard]] bool found_nothing() const { return ended_ && !is_stale_ && list_.empty(); }

    /// The one that is pointed at, in the list or by keys; none for an index that there is not.
    void point_out(std::optional<std::size_t> index) { pointed_out_ = index; }
    [[nodiscard]] std::optional<std::size_t> pointed_out() const;
    /// The next one down the list, or up for -1, and round its ends.
    void point_further(int by);

    /// The wall gets it as a piece that is wished for, as one step: "Wish for an A3 frame". True
    /// when it was kept.
    bool take(Session& session, std::size_t index);

  private:
    void compare(const Session& session);

    using List = std::vector<arrange::Suggestion>;
    using Search = Background<List>;

    std::unique_ptr<Search> search_;
    std::optional<wall::Project> about_;  ///< The wall that was searched.
    List list_;
    List none_;
    bool ended_ = false;  ///< A search did, and `list_` is its answer.
    bool is_stale_ = false;
    std::uint64_t version_ = 0;  ///< Of the session when it was last compared with `about_`.
    std::optional<std::size_t> pointed_out_;
};

using mounts::shop_name;

/// Its measures over the moulding as it would hang, in the person's unit: "340 × 460 mm".
std::string outside_words(const arrange::Suggestion& suggestion, units::LengthUnit unit);

/// "Kelp would fit with 35 mm of mount around it."; empty when no waiting print fits.
std::string print_words(const wall::Project& project, const arrange::Suggestion& suggestion);

}  // namespace wallwright::desk
