// Slow work on a thread of its own, whose answers are looked for now and then.
#pragma once

#include <atomic>
#include <exception>
#include <functional>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <utility>

namespace wallwright::desk {

/// All of it is called on one thread, the window's. `Answer` is a value that needs nothing of the
/// thread that made it.
template <class Answer>
class Background {
  public:
    /// Called by the work on its thread: how much is done, 0 to 1, and a first answer where there
    /// is one. False asks it to come to an end.
    using Tell = std::function<bool(double, std::optional<Answer>)>;
    using Work = std::function<Answer(const Tell&)>;

    Background() = default;
    Background(const Background&) = delete;
    Background& operator=(const Background&) = delete;
    ~Background() { stop(); }

    /// Stops what runs, and forgets its answers.
    void start(Work work) {
        stop();
        stop_asked_ = false;
        running_ = true;
        done_ = 0;
        thread_ = std::thread([this, work = std::move(work)] {
            try {
                keep(work([this](double done, std::optional<Answer> first) {
                    done_ = done;
                    if (first)
                        keep(std::move(*first));
                    return !stop_asked_;
                }));
            } catch (const std::exception& error) {
                const std::scoped_lock lock(mutex_);
                failure_ = error.what();
            }
            running_ = false;
        });
    }

    /// Waits for the work to notice.
    void stop() {
        finish();
        newest_.reset();
        failure_.reset();
    }
    /// The same, and what it has by then can still be taken.
    void finish() {
        stop_asked_ = true;
        if (thread_.joinable())
            thread_.join();
    }

    [[nodiscard]] bool is_running() const { return running_; }
    [[nodiscard]] double done() const { return done_; }

    /// The newest answer, once.
    std::optional<Answer> take() {
        const std::scoped_lock lock(mutex_);
        return std::exchange(newest_, std::nullopt);
    }
    /// What the work threw instead of its last answer, once.
    std::optional<std::string> take_failure() {
        const std::scoped_lock lock(mutex_);
        return std::exchange(failure_, std::nullopt);
    }

  private:
    void keep(Answer answer) {
        const std::scoped_lock lock(mutex_);
        newest_ = std::move(answer);
    }

    std::thread thread_;
    std::atomic<bool> stop_asked_ = false;
    std::atomic<bool> running_ = false;
    std::atomic<double> done_ = 0;
    std::mutex mutex_;
    std::optional<Answer> newest_;
    std::optional<std::string> failure_;
};

}  // namespace wallwright::desk
