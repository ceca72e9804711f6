#include "cli/interrupt.h"

#include <atomic>

namespace wallwright::cli {

namespace {

// Not volatile sig_atomic_t: the system may choose the thread of the search to run the handler on.
std::atomic<bool> stop_asked = false;
std::atomic<bool> hears_interrupt = false;
std::atomic<bool> hears_terminate = false;
static_assert(std::atomic<bool>::is_always_lock_free, "only then may a handler use them");

extern "C" void note_and_make_way(int) {
    stop_asked = true;
    if (hears_interrupt)
        std::signal(SIGINT, SIG_DFL);
    if (hears_terminate)
        std::signal(SIGTERM, SIG_DFL);
}

void listen(int signal, struct sigaction& old, std::atomic<bool>& hears) {
    struct sigaction action = {};
    action.sa_handler = note_and_make_way;
    action.sa_flags = SA_RESTART;
    sigemptyset(&action.sa_mask);
    sigaction(signal, nullptr, &old);
    hears = old.sa_handler != SIG_IGN;
    if (hears)
        sigaction(signal, &action, nullptr);
}

}  // namespace

Interrupt::Interrupt() {
    stop_asked = false;
    listen(SIGINT, old_interrupt_, hears_interrupt);
    listen(SIGTERM, old_terminate_, hears_terminate);
}

Interrupt::~Interrupt() {
    sigaction(SIGINT, &old_interrupt_, nullptr);
    sigaction(SIGTERM, &old_terminate_, nullptr);
}

bool Interrupt::asked() const {
    return stop_asked;
}

}  // namespace wallwright::cli
