#include "arrange/arrange.h"

#include "arrange/stream.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace wallwright::arrange {

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t kStreams = 2;
constexpr std::chrono::milliseconds kTellEvery{50};

Candidate candidate_of(const Task& task, Found found) {
    Candidate candidate{found.pattern, std::move(found.layout), {}, {}};
    candidate.score = score_of(View(task, candidate.layout));
    candidate.left_out = ids_left_out(task, candidate.layout);
    return candidate;
}

/// What the streams tell the thread that asked.
class Board {
  public:
    void put(std::size_t stream, std::vector<Found> found) {
        const std::scoped_lock lock(mutex_);
        found_[stream] = std::move(found);
        changed_ = true;
    }
    void finish() {
        const std::scoped_lock lock(mutex_);
        ++finished_;
        told_.notify_one();
    }
    /// Until all streams have finished, or the time is over.
    void wait_until(Clock::time_point end) {
        std::unique_lock lock(mutex_);
        told_.wait_until(lock, end, [this] { return finished_ == kStreams; });
    }
    bool take_changed() {
        const std::scoped_lock lock(mutex_);
        return std::exchange(changed_, false);
    }
    bool is_finished() {
        const std::scoped_lock lock(mutex_);
        return finished_ == kStreams;
    }
    std::vector<Found> all() {
        const std::scoped_lock lock(mutex_);
        std::vector<Found> all;
        for (const std::vector<Found>& one : found_)
            all.insert(all.end(), one.begin(), one.end());
        return all;
    }

  private:
    std::mutex mutex_;
    std::condition_variable told_;
    std::vector<Found> found_[kStreams];
    bool changed_ = false;
    std::size_t finished_ = 0;
};

/// The search from its first plans to its end.
class Search {
  public:
    Search(const Task& task, const ArrangeOptions& options) : task_(task), options_(options) {}

    std::vector<Candidate> run(const std::function<bool(const Progress&)>& go_on) {
        if (try_first_plans(go_on) && tell_first(go_on)) {
            std::vector<std::jthread> threads;
            for (std::size_t i = 0; i < kStreams; ++i)
                threads.emplace_back([this, i](const std::stop_token& stop) { work(i, stop); });
            watch(go_on);
            for (std::jthread& thread : threads)
                thread.request_stop();
        }  // waits for them
        std::vector<Found> all = board_.all();
        return chosen(all.empty() ? first_.found() : all);
    }

  private:
    /// For hundreds of pieces that may take a while; false when it was stopped before the end.
    bool try_first_plans(const std::function<bool(const Progress&)>& go_on) {
        View view(task_);
        bool goes_on = true;
        Clock::time_point told = Clock::now();
        const auto tell = [&] {
            if (goes_on && Clock::now() - told >= kTellEvery / 2) {
                goes_on = go_on({chosen(first_.found()), done()});
                told = Clock::now();
            }
            return goes_on;
        };
        for (const Pattern pattern :
             {Pattern::grid, Pattern::row, Pattern::spine, Pattern::columns}) {
            if (options_.pattern && *options_.pattern != pattern)
                continue;
            for (Plan& plan : first_plans(task_, pattern, tell))
                if (std::optional<Found> found = found_of(view, plan)) {
                    first_.offer(*found);
                    tried_.push_back({std::move(plan), std::move(*found)});
                }
            if (!tell())
                return false;
        }
        return true;
    }

    bool tell_first(const std::function<bool(const Progress&)>& go_on) {
        return first_.found().empty() || go_on({chosen(first_.found()), done()});
    }

    void work(std::size_t number, const std::stop_token& stop) {
        Stream stream(task_, tried_, options_.pattern, options_.seed * kStreams + number);
        board_.put(number, stream.elite().found());
        for (std::uint64_t i = 0; i < options_.rounds && !stop.stop_requested(); ++i) {
            const bool better = stream.round();
            rounds_ += 1;
            if (better)
                board_.put(number, stream.elite().found());
        }
        board_.finish();
    }

    void watch(const std::function<bool(const Progress&)>& go_on) {
        std::vector<Candidate> best = chosen(first_.found());
        while (!board_.is_finished() && Clock::now() < end_) {
            board_.wait_until(std::min(end_, Clock::now() + kTellEvery));
            if (board_.take_changed())
                best = chosen(board_.all());
            if (!go_on({best, done()}))
                return;
        }
    }

    [[nodiscard]] double done() const {
        const std::chrono::duration<double> gone = Clock::now() - start_;
        const double of_rounds =
            static_cast<double>(rounds_) / (static_cast<double>(options_.rounds) * kStreams);
        return std::clamp(std::max(gone.count() / options_.seconds, of_rounds), 0.0, 1.0);
    }

    [[nodiscard]] std::vector<Candidate> chosen(const std::vector<Found>& found) const {
        std::vector<Candidate> best;
        for (Found& one : choose_different(found, options_.layouts))
            best.push_back(candidate_of(task_, std::move(one)));
        return best;
    }

    const Task& task_;
    const ArrangeOptions& options_;
    Clock::time_point start_ = Clock::now();
    Clock::time_point end_ = start_ + std::chrono::duration_cast<Clock::duration>(
                                          std::chrono::duration<double>(options_.seconds));
    std::vector<Tried> tried_;
    Elite first_;
    Board board_;
    std::atomic<std::uint64_t> rounds_ = 0;
};

}  // namespace

std::vector<Candidate> arrange(const Task& task, const ArrangeOptions& options,
                               const std::function<bool(const Progress&)>& go_on) {
    if (free_items(task).empty())
        return {};
    return Search(task, options).run(go_on);
}

}  // namespace wallwright::arrange
