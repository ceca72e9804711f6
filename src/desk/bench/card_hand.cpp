#include "desk/bench/card_hand.h"

#include "desk/bench/card_snap.h"
#include "desk/drag.h"
#include "draw/card_sheet.h"
#include "edits/card.h"
#include "mounts/card/plan_words.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Vec;
using geometry::Wall;
using mounts::CardLot;
using mounts::CardPlan;

constexpr double kStart = 4;        // px after which a hand that holds a blank carries it
constexpr double kSnap = 9;         // px within which an edge takes hold
constexpr double kLockReach = 2.4;  // mm on paper about its middle
constexpr double kLockIn = 3.2;     // mm on paper from the blank's corner to the lock's middle

const LaidBlank* blank_at(const CardScene& scene, Point<Wall> at) {
    const auto found = std::ranges::find_if(
        scene.blanks, [at](const LaidBlank& blank) { return blank.place.contains(at); });
    return found == scene.blanks.end() ? nullptr : &*found;
}

const LaidBlank* blank_named(const CardScene& scene, const BlankName& name) {
    const auto found = std::ranges::find_if(scene.blanks, [&](const LaidBlank& blank) {
        return name_of(*scene.choice.plan(), blank) == name;
    });
    return found == scene.blanks.end() ? nullptr : &*found;
}

bool is_on_lock(const CardScene& scene, const LaidBlank& blank, Point<Wall> at) {
    return geometry::distance(lock_of(blank, scene.unit), at) <= kLockReach * scene.unit;
}

const LaidSheet* sheet_at(const CardScene& scene, std::size_t lot, Point<Wall> at) {
    const auto found = std::ranges::find_if(scene.layout.sheets, [&](const LaidSheet& sheet) {
        return sheet.at.lot == lot && sheet.place.contains(at);
    });
    return found == scene.layout.sheets.end() ? nullptr : &*found;
}

const mounts::BlankOwner& owner_of(const CardPlan& plan, std::size_t lot, std::size_t blank) {
    return plan.lots[lot].owners[blank];
}

bool has_grain(const CardLot& lot) {
    return std::ranges::any_of(lot.task.sheets, &mounts::NestSheet::has_grain);
}

mounts::BlankMove move_of(const LaidBlank& blank, const CardScene& scene) {
    const LaidSheet& sheet = *scene.layout.find(blank.at);
    return {blank.at.lot,
            blank.at.sheet,
            blank.blank,
            blank.place.min.x - sheet.place.min.x,
            sheet.place.max.y - blank.place.max.y,
            blank.turned};
}

/// Else it is said why nothing can be done with this plan.
bool is_current(Session& session, const CardChoice& choice) {
    if (choice.is_stale())
        session.notice = Notice{
            false,
            "The card is being laid out anew. Do that again once the new plan lies on the bench."};
    return !choice.is_stale();
}

void keep(Session& session, const CardPlan& plan, std::size_t lot, std::size_t blank,
          const Result<wall::KeptBlank>& kept) {
    if (!kept) {
        session.notice = Notice{true, to_text(kept.error())};
        return;
    }
    session.apply(
        fmt::format("Keep the blank for {}", mounts::blank_name(owner_of(plan, lot, blank))),
        edits::keep_blank(session.kept(), *kept));
}

std::string spot_words(const mounts::BlankMove& move, const SheetSpot& spot,
                       units::LengthUnit unit) {
    return fmt::format("{} from the left{}, {} from the top{}",
                       units::format_length(move.left, unit), spot.holds_left ? ", at an edge" : "",
                       units::format_length(move.top, unit), spot.holds_top ? ", at an edge" : "");
}

}  // namespace

BlankName name_of(const CardPlan& plan, const LaidBlank& blank) {
    const mounts::BlankOwner& owner = owner_of(plan, blank.at.lot, blank.blank);
    return {owner.piece, owner.layer};
}

bool is_kept(const CardPlan& plan, const LaidBlank& blank) {
    return plan.lots[blank.at.lot].kept[blank.blank];
}

Point<Wall> lock_of(const LaidBlank& blank, double unit) {
    const double in = std::min({kLockIn * unit, blank.place.width() / 2, blank.place.height() / 2});
    return {blank.place.max.x - in, blank.place.min.y + in};
}

void CardHand::press(Session& session, const CardScene& scene, const CardEvent& event) {
    last_ = event;
    carried_.reset();
    const LaidBlank* blank = blank_at(scene, event.at);
    if (blank == nullptr) {
        chosen.reset();
        session.selection.clear();
        return;
    }
    held_ = Held{*blank, ::wallwright::desk::is_on_lock(scene, *blank, event.at), event.at,
                 event.at - blank->place.centre()};
}

void CardHand::move(const Session& session, const CardScene& scene, const CardEvent& event) {
    last_ = event;
    if (!held_) {
        const LaidBlank* blank = blank_at(scene, event.at);
        hovered_ =
            blank == nullptr ? std::nullopt : std::optional(name_of(*scene.choice.plan(), *blank));
        on_lock_ = blank != nullptr && ::wallwright::desk::is_on_lock(scene, *blank, event.at);
        return;
    }
    if (carried_ || geometry::distance(held_->from, event.at) > kStart * event.pixel)
        carry(session, scene, event);
}

void CardHand::carry(const Session& session, const CardScene& scene, const CardEvent& event) {
    if (!carried_) {
        carried_in_ = scene.choice.plan_number();
        const LaidBlank& blank = held_->blank;
        carried_ = CarriedBlank{name_of(*scene.choice.plan(), blank),
                                blank.at.lot,
                                blank.blank,
                                blank.turned,
                                blank.place,
                                std::nullopt,
                                std::nullopt,
                                ""};
    }
    settle(session, scene, event);
}

void CardHand::settle(const Session& session, const CardScene& scene, const CardEvent& event) {
    CarriedBlank& carried = *carried_;
    const CardPlan& plan = *scene.choice.plan();
    const CardLot& lot = plan.lots[carried.lot];
    const geometry::Size upright = lot.task.blanks[carried.blank].size;
    const geometry::Size size = carried.turned ? upright.turned() : upright;
    const Point<Wall> middle = event.at + -1.0 * held_->grip;
    carried.place = Rect<Wall>::at({middle.x - size.width / 2, middle.y - size.height / 2}, size);
    carried.kept.reset();
    carried.over.reset();
    const LaidSheet* sheet = sheet_at(scene, carried.lot, event.at);
    if (sheet == nullptr) {
        carried.words = "Let it go on a sheet of its own card.";
        return;
    }
    carried.over = sheet->at;
    mounts::OnSheet place{carried.place.min.x - sheet->place.min.x,
                          sheet->place.max.y - carried.place.max.y, size};
    if (!event.free)
        place = held_inside(lot.task.sheets[lot.plan.sheets[sheet->at.sheet].sheet], place);
    const SheetSpot spot =
        snap_on_sheet(lot, sheet->at.sheet, carried.blank, place,
                      event.free ? -1 : kSnap * event.pixel, hand_step(session.kept().unit));
    const mounts::BlankMove move{carried.lot, sheet->at.sheet, carried.blank,
                                 spot.left,   spot.top,        carried.turned};
    carried.place = Rect<Wall>::at(
        {sheet->place.min.x + spot.left, sheet->place.max.y - spot.top - size.height}, size);
    const auto kept = mounts::kept_there(session.kept(), plan, move);
    if (kept)
        carried.kept = *kept;
    carried.words = kept ? spot_words(move, spot, session.kept().unit) : to_text(kept.error());
}

void CardHand::turn(Session& session, const CardScene& scene) {
    if (!held_ || !carried_)
        return;
    if (has_grain(scene.choice.plan()->lots[carried_->lot])) {
        session.notice =
            Notice{false,
                   "This card has a grain that runs upright in every mount, so its blanks "
                   "are not turned."};
        return;
    }
    carried_->turned = !carried_->turned;
    held_->grip = {held_->grip.y, held_->grip.x};
    settle(session, scene, last_);
}

void CardHand::release(Session& session, const CardScene& scene, const CardEvent& event) {
    move(session, scene, event);
    if (!held_)
        return;
    const Held held = *std::exchange(held_, std::nullopt);
    const BlankName name = name_of(*scene.choice.plan(), held.blank);
    if (!carried_) {
        chosen = name;
        session.selection.set(name.piece);
        if (held.on_lock)
            keep_or_free(session, scene, name);
        return;
    }
    const CarriedBlank carried = *carried_;
    carried_.reset();
    if (!carried.over || !is_current(session, scene.choice))
        return;
    if (!carried.kept) {
        session.notice = Notice{true, carried.words};
        return;
    }
    keep(session, *scene.choice.plan(), carried.lot, carried.blank, *carried.kept);
    chosen = name;
    carried_ = carried;
}

void CardHand::cancel() {
    held_.reset();
    carried_.reset();
}

void CardHand::follow(const CardChoice& choice) {
    const bool waits = choice.is_stale() && choice.is_running();
    if (carried_ && ((!held_ && !waits) || choice.plan_number() != carried_in_))
        cancel();
}

void CardHand::keep_only_in(const wall::Project& project) {
    if (chosen && find(project, chosen->piece) == nullptr)
        chosen.reset();
}

void keep_or_free(Session& session, const CardScene& scene, const BlankName& name) {
    if (!is_current(session, scene.choice))
        return;
    const LaidBlank* blank = blank_named(scene, name);
    if (blank == nullptr) {
        session.notice = Notice{true, fmt::format("The plan has no sheet for the blank of {}, so "
                                                  "there is nowhere to keep it.",
                                                  wall::title_of(session.kept(), name.piece))};
        return;
    }
    const CardPlan& plan = *scene.choice.plan();
    if (!is_kept(plan, *blank)) {
        keep(session, plan, blank->at.lot, blank->blank,
             mounts::kept_there(session.kept(), plan, move_of(*blank, scene)));
        return;
    }
    session.apply(fmt::format("Free the blank for {}",
                              mounts::blank_name(owner_of(plan, blank->at.lot, blank->blank))),
                  edits::free_blank(session.kept(), name.piece, static_cast<int>(name.layer) + 1));
}

}  // namespace wallwright::desk
