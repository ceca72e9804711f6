#include "app/actions.h"
#include "app/panels/panels.h"
#include "base/random.h"
#include "person.h"
#include "support/command.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>

#include <set>

using namespace wallwright;
using namespace wallwright::app;

namespace {

constexpr int kEvents = 20'000;
const ImVec2 kWindow{1280, 800};

using Items = std::map<std::string, ItemBox>;

/// What a hand would do next that sees things but knows nothing of them.
class Monkey {
  public:
    explicit Monkey(std::uint64_t seed) : random_(seed) {}

    sf::Event next(const Items& items) {
        if (random_.below(50) == 0)
            return away();
        switch (random_.below(10)) {
            case 0:
            case 1:
                return button(sf::Event::MouseButtonPressed);
            case 2:
            case 3:
                return button(sf::Event::MouseButtonReleased);
            case 4:
                return key(sf::Event::KeyPressed);
            case 5:
                return key(sf::Event::KeyReleased);
            case 6:
                return text();
            case 7:
                return wheel();
            default:
                return move(items);
        }
    }

  private:
    /// To the middle of some item, or anywhere.
    sf::Event move(const Items& items) {
        sf::Event event{};
        event.type = sf::Event::MouseMoved;
        x_ = static_cast<int>(random_.below(1300));
        y_ = static_cast<int>(random_.below(820));
        if (!items.empty() && random_.below(2) == 0) {
            const ItemBox& box = std::next(items.begin(), random_.below(items.size()))->second;
            x_ = static_cast<int>((box.min.x + box.max.x) / 2);
            y_ = static_cast<int>((box.min.y + box.max.y) / 2);
        }
        event.mouseMove = {x_, y_};
        return event;
    }
    sf::Event button(sf::Event::EventType type) {
        sf::Event event{};
        event.type = type;
        const auto which = random_.below(8) == 0 ? sf::Mouse::Middle : sf::Mouse::Left;
        event.mouseButton = {which, x_, y_};
        return event;
    }
    sf::Event key(sf::Event::EventType type) {
        sf::Event event{};
        event.type = type;
        event.key.code = static_cast<sf::Keyboard::Key>(
            static_cast<int>(random_.below(sf::Keyboard::KeyCount + 1)) - 1);
        event.key.control = random_.below(4) == 0;
        event.key.shift = random_.below(4) == 0;
        event.key.alt = random_.below(8) == 0;
        return event;
    }
    sf::Event text() {
        sf::Event event{};
        event.type = sf::Event::TextEntered;
        constexpr char32_t kLetters[] = U"0123456789 .,/'\"cmink\x7F\b\ré⅜";
        event.text.unicode = kLetters[random_.below(std::size(kLetters) - 1)];
        return event;
    }
    /// The pointer leaves the window, or another window takes the keyboard.
    sf::Event away() {
        sf::Event event{};
        event.type = random_.below(2) == 0 ? sf::Event::MouseLeft : sf::Event::LostFocus;
        return event;
    }
    sf::Event wheel() {
        sf::Event event{};
        event.type = sf::Event::MouseWheelScrolled;
        event.mouseWheelScroll.wheel = sf::Mouse::VerticalWheel;
        event.mouseWheelScroll.delta = random_.below(2) == 0 ? 1.0F : -1.0F;
        return event;
    }

    Random random_;
    int x_ = 0;
    int y_ = 0;
};

/// Dialogs that would leave the wall or write files are put away at once, others after a while.
void stay_at_the_wall(State& state, int event) {
    constexpr int kLong = 150;
    const bool may_stay = std::holds_alternative<KeysDialog>(state.dialog) ||
                          std::holds_alternative<SettingsDialog>(state.dialog);
    if (!may_stay || event % kLong == 0)
        state.dialog = {};
    state.quit = false;
}

}  // namespace

TEST_CASE("Twenty thousand random events neither crash the app nor spoil or lose the work") {
    const test::ScratchFolder home;
    const OwnSettings settings(home.path());
    auto demo = desk::demo_wall();
    REQUIRE(demo);
    State state{desk::Session(*demo, {}, desk::demo_folder()), {}};
    state.layouts.options.rounds = 20;
    Headless window(kWindow);
    window.on_key = [&state](std::string_view key) { press_key(state, key); };
    window.on_focus_lost = [&state] { let_go(state); };
    window.frame([&state](Ui& ui) { parts(ui, state); });
    Monkey monkey(20261125);
    wall::Project last = state.session.kept();
    int steps = 0;
    std::set<desk::Step> seen;
    for (int event = 0; event < kEvents; ++event) {
        window.push(monkey.next(window.ui.probe.items()));
        window.frame();
        stay_at_the_wall(state, event);
        seen.insert(state.step);
        if (state.session.project() != state.session.kept())
            REQUIRE(wall::faults(state.session.project()).empty());
        if (state.session.kept() == last)
            continue;
        ++steps;
        last = state.session.kept();
        REQUIRE(wall::faults(last).empty());
    }
    let_go(state);
    CHECK(steps > 25);
    CHECK(seen.size() == 5);
    // Whatever was done can be taken back step by step, as far as the history reaches, and redone.
    const wall::Project end = state.session.kept();
    int undone = 0;
    for (; state.session.history().can_undo(); ++undone)
        state.session.undo();
    CHECK(undone > 0);
    REQUIRE(steps < static_cast<int>(edits::History::kMost));
    CHECK(state.session.kept() == *demo);
    for (; undone > 0; --undone)
        state.session.redo();
    CHECK(state.session.kept() == end);
}
