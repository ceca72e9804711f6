#include "desk/bench/match_hand.h"

#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using wall::PieceId;
using wall::PrintId;
using wall::Project;

constexpr double kReach = 6;  // px beside a line or a lock that still count
constexpr double kStart = 4;  // px after which a hand that holds a print carries it

const BoardItem* item_at(const Drawer& drawer, Point<Wall> at) {
    const auto found = std::ranges::find_if(
        drawer.items, [at](const BoardItem& item) { return item.place.contains(at); });
    return found == drawer.items.end() ? nullptr : &*found;
}

bool can_lock(const Link& link) {
    return link.kind != LinkKind::wanted;
}

std::string pair_words(const mounts::Pair& pair) {
    std::string words = pair.text;
    for (const mounts::Alternative& other : pair.alternatives)
        words += fmt::format("\n\n{}", other.text);
    return words;
}

std::string words_of(const MatchChoice& choice, const PrintId& print) {
    if (const mounts::Pair* pair = choice.pair_of(print))
        return pair_words(*pair);
    for (const mounts::LeftPrint& left : choice.found()->match.left_prints)
        if (left.print == print)
            return left.text;
    return "";
}

std::string words_of(const MatchChoice& choice, const PieceId& piece) {
    if (const mounts::Pair* pair = choice.pair_of(piece))
        return pair_words(*pair);
    for (const mounts::LeftPiece& left : choice.found()->match.left_pieces)
        if (left.piece == piece)
            return left.text;
    return "";
}

std::string words_of(const Project& project, const MatchChoice& choice, const LinkAt& link) {
    const wall::Piece* piece = find(project, link.piece);
    if (link.lock && piece != nullptr)
        return piece->keeps_print
                   ? fmt::format("{} is kept in this frame. Press to let it go.",
                                 title_of(project, link.print))
                   : fmt::format("Press to keep {} in this frame, whatever else would match.",
                                 title_of(project, link.print));
    const mounts::Pair* pair = choice.pair_of(link.print);
    if (pair != nullptr && pair->piece == link.piece)
        return pair_words(*pair);
    return fmt::format("Today: {}", fitting_words(project, link.print, link.piece));
}

/// The print that a hand takes hold of there.
std::optional<PrintId> print_of(const Project& project, const BoardThing& thing) {
    if (const auto* print = std::get_if<PrintId>(&thing))
        return *print;
    const auto* id = std::get_if<PieceId>(&thing);
    const wall::Piece* piece = id != nullptr ? find(project, *id) : nullptr;
    return piece != nullptr ? piece->print : std::nullopt;
}

}  // namespace

std::optional<BoardThing> board_hit(const MatchLayout& layout, const std::vector<Link>& links,
                                    Point<Wall> at, double reach) {
    if (const BoardItem* print = item_at(layout.prints, at))
        return BoardThing{*print->print};
    if (const BoardItem* frame = item_at(layout.frames, at))
        return BoardThing{*frame->piece};
    for (const Link& link : links)
        if (can_lock(link) && geometry::distance(link.lock_at, at) <= 1.5 * reach)
            return BoardThing{LinkAt{link.print, link.piece, true}};
    const auto nearest = std::ranges::min_element(
        links, {}, [at](const Link& link) { return distance_to(link, at); });
    if (nearest == links.end() || distance_to(*nearest, at) > reach)
        return std::nullopt;
    return BoardThing{LinkAt{nearest->print, nearest->piece, false}};
}

std::string board_words(const Project& project, const MatchChoice& choice,
                        const BoardThing& thing) {
    if (const auto* link = std::get_if<LinkAt>(&thing))
        return words_of(project, choice, *link);
    if (choice.found() == nullptr)
        return "";
    if (const auto* print = std::get_if<PrintId>(&thing))
        return words_of(choice, *print);
    return words_of(choice, std::get<PieceId>(thing));
}

void MatchHand::press(Session& session, const MatchScene& scene, const BoardEvent& event) {
    const auto thing = board_hit(scene.layout, scene.links, event.at, kReach * event.pixel);
    hovered_ = thing;
    if (!thing) {
        chosen.reset();
        session.selection.clear();
        return;
    }
    held_ = Held{*thing, event.at};
}

void MatchHand::move(const Session& session, const MatchScene& scene, const BoardEvent& event) {
    if (!held_) {
        hovered_ = board_hit(scene.layout, scene.links, event.at, kReach * event.pixel);
        return;
    }
    if (carried_ || geometry::distance(held_->from, event.at) > kStart * event.pixel)
        carry(session, scene, event);
}

void MatchHand::carry(const Session& session, const MatchScene& scene, const BoardEvent& event) {
    const Project& project = session.kept();
    const auto print = print_of(project, held_->thing);
    const wall::Print* one = print ? find(project, *print) : nullptr;
    if (one == nullptr)
        return;
    carried_ = CarriedPrint{*print, std::nullopt, {}, std::nullopt, "", true};
    if (const auto* piece = std::get_if<PieceId>(&held_->thing))
        carried_->from = *piece;
    const geometry::Vec<Wall> half{one->size.width / 2, one->size.height / 2};
    carried_->place = {event.at + -1.0 * half, event.at + half};
    const BoardItem* frame = item_at(scene.layout.frames, event.at);
    if (frame != nullptr && frame->piece != carried_->from) {
        carried_->over = frame->piece;
        carried_->words = fitting_words(project, *print, *frame->piece);
        carried_->will_do = will_do(project, *print, *frame->piece);
    } else if (carried_->from && scene.layout.prints.area.contains(event.at)) {
        carried_->words = fmt::format("{} goes back into the drawer.", title_of(project, *print));
    }
}

void MatchHand::click(Session& session, const BoardThing& thing) {
    if (const auto* print = std::get_if<PrintId>(&thing)) {
        chosen = *print;
        session.selection.clear();
    } else if (const auto* piece = std::get_if<PieceId>(&thing)) {
        chosen.reset();
        session.selection.set(*piece);
    } else if (const LinkAt& link = std::get<LinkAt>(thing); link.lock) {
        const wall::Piece* of = find(session.kept(), link.piece);
        if (of != nullptr)
            keep_print(session, link.piece, !of->keeps_print);
    } else {
        chosen = link.print;
        session.selection.clear();
    }
}

void MatchHand::release(Session& session, const MatchScene& scene, const BoardEvent& event) {
    move(session, scene, event);
    if (!held_)
        return;
    const Held held = *std::exchange(held_, std::nullopt);
    const auto carried = std::exchange(carried_, std::nullopt);
    if (!carried) {
        if (geometry::distance(held.from, event.at) <= kStart * event.pixel)
            click(session, held.thing);
    } else if (carried->over) {
        put_by_hand(session, carried->print, *carried->over);
    } else if (carried->from && scene.layout.prints.area.contains(event.at)) {
        take_out(session, *carried->from);
    }
}

void MatchHand::cancel() {
    held_.reset();
    carried_.reset();
}

void MatchHand::keep_only_in(const Project& project) {
    if (chosen && find(project, *chosen) == nullptr)
        chosen.reset();
}

}  // namespace wallwright::desk
