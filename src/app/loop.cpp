#include "app/loop.h"

#include "app/input.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <optional>
#include <thread>

namespace wallwright::app {

namespace {

using std::chrono::milliseconds;

constexpr int kFramesAfter = 3;
constexpr milliseconds kRest{600};
constexpr milliseconds kQuiet{2000};
constexpr int kFramesOfShot = 6;
constexpr milliseconds kForPictures{25};  // in one frame, none of it in the first

/// Dear ImGui's state for the life of the window.
class GuiLife {
  public:
    GuiLife() : context_(ImGui::CreateContext()) {
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.LogFilename = nullptr;
        Input::set_up(io);
    }
    ~GuiLife() { ImGui::DestroyContext(context_); }
    GuiLife(const GuiLife&) = delete;
    GuiLife& operator=(const GuiLife&) = delete;

  private:
    ImGuiContext* context_;
};

class Loop {
  public:
    Loop(Frame& frame, const LoopOptions& options)
        : frame_(frame), options_(options), window_(options.size, options.display_scale) {
        ui_.host = &window_;
        if (options.announce)
            say(fmt::format("window {:.1f} ms", since(started_)));
    }

    Outcome run() {
        rhythm_.wake(Rhythm::Clock::now());
        while (!frame_.wants_quit()) {
            const auto now = Rhythm::Clock::now();
            const bool is_called = take_events();
            const bool is_time = wake_at_ && now >= *wake_at_;
            if (frame_.tick() || is_called || is_time || input_.is_waiting())
                rhythm_.wake(now);
            if (!window_.has_room() || !rhythm_.take_frame(now)) {
                std::this_thread::sleep_for(rhythm_.sleep(now));
                continue;
            }
            draw();
            // What is worked out in the background is to be in the picture too.
            const bool is_all_there = !window_.is_picture_waiting() && !wake_at_;
            if (!options_.shot.empty() && drawn_ >= kFramesOfShot && is_all_there)
                return window_.save_picture(options_.shot);
            window_.show();
            report();
        }
        return {};
    }

  private:
    /// True when there were any. A shot takes none, so that it is always the same.
    bool take_events() {
        sf::Event event{};
        bool any = false;
        while (window_.poll(event)) {
            any = true;
            if (event.type == sf::Event::Closed)
                frame_.close_wanted();
            else if (event.type == sf::Event::Resized)
                window_.resized();
            if (options_.shot.empty())
                input_.push(event);
        }
        return any;
    }

    void draw() {
        const auto begun = Rhythm::Clock::now();
        dress();
        ImGuiIO& io = ImGui::GetIO();
        io.DisplaySize = window_.size();
        const std::chrono::duration<float> passed = begun - last_frame_;
        io.DeltaTime = std::max(passed.count(), 0.001F);
        last_frame_ = begun;
        input_.apply(io);
        ui_.probe.begin_frame();
        window_.load_pictures_for(drawn_ == 0 ? milliseconds(0) : kForPictures);
        ImGui::NewFrame();
        if (input_.take_focus_lost())
            frame_.focus_lost();
        for (const std::string& key : input_.take_keys())
            frame_.key(key);
        frame_.draw(ui_);
        ImGui::Render();
        built_ms_ = since(begun);
        plan_waking(begun);
        window_.set_cursor(ImGui::GetMouseCursor());
        const auto painting = Rhythm::Clock::now();
        window_.paint(*ImGui::GetDrawData(), ui_.theme().desk);
        painted_ms_ = since(painting);
        ++drawn_;
        if (window_.is_picture_waiting())
            rhythm_.wake(Rhythm::Clock::now());
    }

    /// What a panel asked to be shown later, a tooltip for one.
    void plan_waking(Rhythm::Clock::time_point now) {
        const std::optional<double> seconds = std::exchange(ui_.memory.wake_in, std::nullopt);
        wake_at_.reset();
        if (seconds)
            wake_at_ = now + std::chrono::duration_cast<Rhythm::Clock::duration>(
                                 std::chrono::duration<double>(*seconds));
    }

    /// Letters and colours as the frame wants them now.
    void dress() {
        const Look look = frame_.look();
        if (look == look_)
            return;
        if (!look_ || look_->scale != look.scale) {
            ui_.fonts = build_fonts(look.scale, static_cast<int>(sf::Texture::getMaximumSize()));
            window_.upload_fonts();
        }
        // What goes with the letters is as large as they could be made.
        apply_theme(theme(look.dark), ui_.fonts.scale);
        ui_.scale = ui_.fonts.scale;
        ui_.dark = look.dark;
        look_ = look;
    }

    void report() {
        if (!options_.announce)
            return;
        if (drawn_ == 1)
            say(fmt::format("ready {:.1f} ms", since(started_)));
        say(fmt::format("frame {}: built in {:.1f} ms, painted in {:.1f} ms, {} vertices", drawn_,
                        built_ms_, painted_ms_, ImGui::GetDrawData()->TotalVtxCount));
        if (rhythm_.is_still() && !input_.is_waiting())
            say_items();
    }

    /// Where everything is, for a hand that cannot see.
    void say_items() const {
        for (const auto& [name, box] : ui_.probe.items())
            say(fmt::format("item {} {:.0f} {:.0f} {:.0f} {:.0f}", name, box.min.x, box.min.y,
                            box.max.x - box.min.x, box.max.y - box.min.y));
        say("idle");
    }

    static double since(Rhythm::Clock::time_point then) {
        return std::chrono::duration<double, std::milli>(Rhythm::Clock::now() - then).count();
    }
    static void say(const std::string& line) {
        std::puts(line.c_str());
        std::fflush(stdout);
    }

    Rhythm::Clock::time_point started_ = Rhythm::Clock::now();
    Frame& frame_;
    const LoopOptions& options_;
    GuiLife gui_;
    Window window_;
    Ui ui_;
    Input input_;
    Rhythm rhythm_;
    std::optional<Look> look_;
    std::optional<Rhythm::Clock::time_point> wake_at_;
    Rhythm::Clock::time_point last_frame_ = Rhythm::Clock::now();
    int drawn_ = 0;
    double built_ms_ = 0;
    double painted_ms_ = 0;
};

}  // namespace

void Rhythm::wake(Clock::time_point now) {
    due_ = kFramesAfter;
    woken_ = now;
    rest_due_ = true;
}

bool Rhythm::take_frame(Clock::time_point now) {
    if (rest_due_ && now - woken_ >= kRest) {
        rest_due_ = false;
        due_ = kFramesAfter;
    }
    if (due_ == 0)
        return false;
    --due_;
    return true;
}

milliseconds Rhythm::sleep(Clock::time_point now) const {
    return now - woken_ < kQuiet ? milliseconds(10) : milliseconds(50);
}

Outcome run(Frame& frame, const LoopOptions& options) {
    return Loop(frame, options).run();
}

}  // namespace wallwright::app
