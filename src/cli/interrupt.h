// Ctrl-C as a wish to be content with what there is so far.
#pragma once

#include <csignal>

namespace wallwright::cli {

/// While it lives, the first SIGINT or SIGTERM is only noted, and the next one ends the program as
/// it always does. A signal that was ignored before stays so, as for a program that runs behind a
/// shell. One at a time.
class Interrupt {
  public:
    Interrupt();
    ~Interrupt();
    Interrupt(const Interrupt&) = delete;
    Interrupt& operator=(const Interrupt&) = delete;

    [[nodiscard]] bool asked() const;

  private:
    struct sigaction old_interrupt_ = {};
    struct sigaction old_terminate_ = {};
};

}  // namespace wallwright::cli
