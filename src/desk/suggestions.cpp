#include "desk/suggestions.h"

#include "desk/broke_off.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::desk {

namespace {

/// "an" where the name is said with a vowel first: "A3", "8 × 10 in", "11 × 14 in", "18 × 24 in".
std::string_view article(const std::string& name) {
    const bool vowel = std::string_view("AEIOaeio8").find(name.front()) != std::string_view::npos;
    return vowel || name.starts_with("11") || name.starts_with("18") ? "an" : "a";
}

}  // namespace

std::string Suggestions::hindrance(const Session& session) {
    const auto& pieces = session.kept().pieces;
    const bool any = std::ranges::any_of(
        pieces, [](const wall::Piece& piece) { return piece.state != wall::PieceState::waiting; });
    return any ? "" : "Nothing is on the wall yet that a frame could join";
}

void Suggestions::start(const Session& session) {
    clear();
    about_ = session.kept();
    version_ = session.kept_version();
    search_ = std::make_unique<Search>();
    search_->start([project = *about_, catalogue = session.catalogue(),
                    wanted = options](const Search::Tell& tell) {
        return arrange::suggest(project, catalogue, wanted,
                                [&tell](double done) { return tell(done, std::nullopt); });
    });
}

void Suggestions::stop() {
    if (search_)
        search_->finish();
}

void Suggestions::clear() {
    search_.reset();
    about_.reset();
    list_.clear();
    ended_ = false;
    is_stale_ = false;
    pointed_out_.reset();
}

void Suggestions::compare(const Session& session) {
    if (!about_ || version_ == session.kept_version())
        return;
    version_ = session.kept_version();
    is_stale_ = session.kept() != *about_;
    if (is_stale_)
        search_.reset();
}

bool Suggestions::follow(Session& session) {
    const bool was_stale = is_stale_;
    compare(session);
    if (!search_ || search_->is_running())
        return was_stale != is_stale_;
    list_ = search_->take().value_or(List{});
    const std::optional<std::string> failure = search_->take_failure();
    search_.reset();
    ended_ = !failure;
    if (failure)
        session.notice = broke_off("The search for a frame to buy", *failure);
    return true;
}

std::optional<std::size_t> Suggestions::pointed_out() const {
    const bool is_there = pointed_out_ && *pointed_out_ < list().size();
    return is_there ? pointed_out_ : std::nullopt;
}

void Suggestions::point_further(int by) {
    const int count = static_cast<int>(list().size());
    if (count == 0)
        return;
    const int before = by > 0 ? -1 : count;
    const auto now = pointed_out();
    const int next = (now ? static_cast<int>(*now) : before) + by;
    pointed_out_ = static_cast<std::size_t>((next % count + count) % count);
}

bool Suggestions::take(Session& session, std::size_t index) {
    if (index >= list().size())
        return false;
    const arrange::Suggestion& suggestion = list_[index];
    const std::string name = shop_name(suggestion.size_name);
    pointed_out_.reset();
    return session.apply(fmt::format("Wish for {} {} frame", article(name), name),
                         arrange::with_suggestion(session.kept(), suggestion));
}

std::string outside_words(const arrange::Suggestion& suggestion, units::LengthUnit unit) {
    return fmt::format("{} × {}", units::format_number(suggestion.place.width(), unit),
                       units::format_length(suggestion.place.height(), unit));
}

std::string print_words(const wall::Project& project, const arrange::Suggestion& suggestion) {
    if (suggestion.prints.empty())
        return "";
    const arrange::PrintFit& fit = suggestion.prints.front();
    const std::string title = title_of(project, fit.print);
    if (!fit.with_mount)
        return fmt::format("Fits {} without a mount.", title);
    return fmt::format("Fits {} with {} of mount around it.", title,
                       units::format_length(fit.border, project.unit));
}

}  // namespace wallwright::desk
