#include "arrange/suggest.h"

#include "arrange/grow.h"
#include "arrange/print_fits.h"
#include "arrange/score.h"
#include "arrange/set_down.h"
#include "arrange/spots.h"
#include "arrange/standard_frames.h"
#include "arrange/standing.h"
#include "arrange/suggest_words.h"
#include "edits/edit.h"
#include "mounts/window.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace wallwright::arrange {

namespace {

// Points of the total that these count as much as: our choices, by what the demo walls looked like.
constexpr double kGlance = 1;      ///< A point of worth_of().
constexpr double kPrintFits = 2;   ///< A waiting print fits as well as can be.
constexpr double kUnlikeSize = 3;  ///< For each time e that it is larger or smaller than is usual.
constexpr double kLow = 6;         ///< Beside the furniture rather than above it.
constexpr double kAtHome = 1.5;    ///< Of the person's own units.
constexpr double kLeadsOn = 16;    ///< All the way to the target.
constexpr std::size_t kPerFrame = 40;  ///< Places judged whole, of one frame one way up.
constexpr std::size_t kPrints = 3;

/// A frame at a place.
struct Idea {
    std::string size_name;
    wall::Frame frame;
    WallRect place;
    double before = 0;
    double after = 0;
    double worth = 0;  ///< Points.
};

/// Tries frames on the wall as it is.
class Trier {
  public:
    Trier(const wall::Project& project, const wall::Catalogue& catalogue)
        : project_(project),
          task_(with_candidate(task_of(project, catalogue, Free::waiting_alone))),
          all_(fixed_part(task_)),
          groups_(standing_groups(task_)),
          item_(static_cast<std::uint32_t>(task_.items.size() - 1)),
          view_(task_) {
        if (project.target)
            target_ = place_of(project.room, *project.target);
    }

    [[nodiscard]] bool is_empty() const { return all_.empty(); }

    /// The frame as it hangs, where it looks best.
    void try_out(const StandardFrame& standard, const wall::Frame& frame,
                 std::vector<Idea>& ideas) {
        task_.items[item_].size = frame.outside;
        const std::vector<PrintFit> prints = fitting_prints(project_, frame, 1);
        const double print =
            prints.empty() ? 0 : kPrintFits * fit_worth(project_, frame, prints.front());
        for (const WallRect& place : best_at_a_glance()) {
            Idea idea = judged(place);
            idea.size_name = standard.size_name;
            idea.frame = frame;
            idea.worth += print + (standard.at_home ? kAtHome : 0);
            ideas.push_back(std::move(idea));
        }
    }

    [[nodiscard]] Suggestion told(const Idea& idea) {
        task_.items[item_].size = idea.frame.outside;
        const Layout pieces = joined_by(idea.place);
        const Score after = score_of(view_);
        view_.look(pieces);
        const Score before = score_of(view_);
        Suggestion suggestion{idea.size_name, idea.frame, idea.place, idea.before,
                              idea.after,     "",         {}};
        suggestion.reason =
            reason_for({project_, task_, pieces, idea.place, target_}, before, after);
        suggestion.prints = fitting_prints(project_, idea.frame, kPrints);
        return suggestion;
    }

  private:
    /// Its last item is the frame that is tried.
    static Task with_candidate(Task task) {
        Item item;
        item.frame = wall::Frame{}.colour;
        item.picture = wall::Print{}.colour;
        task.items.push_back(item);
        return task;
    }

    /// The groups near the place, all in one.
    [[nodiscard]] Layout near(const WallRect& place) const {
        Layout pieces;
        for (const Layout& group : groups_)
            if (distance_between(group, place) <= task_.reach)
                pieces.insert(pieces.end(), group.begin(), group.end());
        return pieces;
    }

    /// The pieces that would be of one group with it.
    [[nodiscard]] Layout joined_by(const WallRect& place) {
        Layout layout = near(place);
        layout.push_back({item_, place});
        view_.look(layout);
        Layout pieces(view_.spots().begin(), view_.spots().end());
        std::erase_if(pieces, [this](const Spot& spot) { return spot.item == item_; });
        return pieces;
    }

    [[nodiscard]] std::vector<WallRect> best_at_a_glance() {
        std::vector<WallRect> places;
        touching_spots(task_, all_, item_, places);
        std::erase_if(places,
                      [this](const WallRect& place) { return !touches(task_, all_, place); });
        std::vector<std::pair<double, WallRect>> seen;
        for (const WallRect& place : places) {
            const Layout pieces = near(place);
            const double led = leads_on(task_, pieces, place, target_);
            seen.emplace_back(kGlance * worth_of(task_, pieces, place) + kLeadsOn * led, place);
        }
        std::ranges::stable_sort(seen, std::greater<>{}, &std::pair<double, WallRect>::first);
        seen.resize(std::min(kPerFrame, seen.size()));
        places.clear();
        for (const auto& one : seen)
            places.push_back(one.second);
        return places;
    }

    /// 0 for a frame between half and twice the middle size of those that it would join; then more.
    [[nodiscard]] static double unlike_size(const Layout& pieces, const WallRect& place) {
        std::vector<double> areas;
        for (const Spot& spot : pieces)
            areas.push_back(spot.place.size().area());
        const auto middle = areas.begin() + static_cast<std::ptrdiff_t>(areas.size() / 2);
        std::ranges::nth_element(areas, middle);
        return std::max(0.0, std::abs(std::log(place.size().area() / *middle)) - std::log(2.0));
    }

    [[nodiscard]] Idea judged(const WallRect& place) {
        Idea idea;
        idea.place = place;
        const Layout pieces = joined_by(place);
        idea.after = total_of(view_);
        idea.before = total_before(pieces);
        idea.worth = idea.after - idea.before - kUnlikeSize * unlike_size(pieces, place) -
                     kLow * sunk_below_furniture(task_.furniture, place) +
                     kLeadsOn * leads_on(task_, pieces, place, target_);
        return idea;
    }

    double total_before(const Layout& pieces) {
        std::vector<std::uint32_t> key;
        for (const Spot& spot : pieces)
            key.push_back(spot.item);
        const auto known = before_.find(key);
        if (known != before_.end())
            return known->second;
        view_.look(pieces);
        return before_[key] = total_of(view_);
    }

    const wall::Project& project_;
    Task task_;
    Layout all_;
    std::vector<Layout> groups_;
    std::uint32_t item_;
    View view_;
    std::optional<WallRect> target_;
    std::map<std::vector<std::uint32_t>, double> before_;
};

std::vector<wall::Frame> both_ways_up(const wall::Frame& frame) {
    std::vector<wall::Frame> ways{frame};
    if (frame.outside.width != frame.outside.height)
        ways.push_back(mounts::as_hung(frame, true));
    return ways;
}

bool is_between(const wall::Frame& frame, double least, double most) {
    return frame.outside.width >= least && frame.outside.height <= most;
}

/// One place: they share half of the smaller.
bool is_same_place(const WallRect& a, const WallRect& b) {
    const double shared =
        std::max(0.0, geometry::overlap_x(a, b)) * std::max(0.0, geometry::overlap_y(a, b));
    return shared >= 0.5 * std::min(a.size().area(), b.size().area());
}

/// The best first, each place and each size once.
std::vector<Idea> best_of_each(std::vector<Idea> ideas, std::size_t most) {
    std::ranges::stable_sort(ideas, std::greater<>{}, &Idea::worth);
    std::vector<Idea> chosen;
    for (const Idea& idea : ideas) {
        const auto is_like = [&idea](const Idea& other) {
            return other.size_name == idea.size_name || is_same_place(other.place, idea.place);
        };
        if (chosen.size() < most && std::ranges::none_of(chosen, is_like))
            chosen.push_back(idea);
    }
    return chosen;
}

bool betters(const Suggestion& one) {
    return one.after > one.before;
}

}  // namespace

std::vector<Suggestion> suggest(const wall::Project& project, const wall::Catalogue& catalogue,
                                const SuggestOptions& options,
                                const std::function<bool(double)>& go_on) {
    Trier trier(project, catalogue);
    std::vector<Suggestion> suggestions;
    if (trier.is_empty())
        return suggestions;
    std::vector<Idea> ideas;
    const std::vector<StandardFrame> frames = standard_frames(project, catalogue);
    for (std::size_t i = 0; i < frames.size(); ++i) {
        if (!go_on(static_cast<double>(i) / static_cast<double>(frames.size())))
            break;
        if (is_between(frames[i].frame, options.least_side, options.most_side))
            for (const wall::Frame& way : both_ways_up(frames[i].frame))
                trier.try_out(frames[i], way, ideas);
    }
    for (const Idea& idea : best_of_each(std::move(ideas), options.top))
        suggestions.push_back(trier.told(idea));
    if (!project.target)  // Else the way there may cost a little.
        std::stable_partition(suggestions.begin(), suggestions.end(), betters);
    return suggestions;
}

bool none_betters(const std::vector<Suggestion>& suggestions) {
    return std::ranges::none_of(suggestions, betters);
}

Result<wall::Project> with_suggestion(const wall::Project& project, const Suggestion& suggestion) {
    wall::Frame frame = suggestion.frame;
    frame.title = fmt::format("{} frame", suggestion.size_name);
    wall::Piece piece;
    piece.title = fmt::format("Wished {} frame", suggestion.size_name);
    piece.state = wall::PieceState::planned;
    piece.wished = true;
    piece.stage = last_stage(project) == 0 ? 0 : last_stage(project) + 1;
    piece.at = suggestion.place.min;
    piece.hanger.type = wall::HangerType::strips;
    return edits::add_piece(project, std::move(frame), std::move(piece));
}

}  // namespace wallwright::arrange
