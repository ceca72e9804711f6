// A program on a terminal of its own, as a person has it before them.
#pragma once

#include <sys/types.h>

#include <string>
#include <vector>

namespace wallwright::test {

/// Its three streams are the terminal, and Ctrl-C typed there reaches it.
class InTerminal {
  public:
    /// The program by its full name, then its words. Fails the test when it cannot be started.
    explicit InTerminal(const std::vector<std::string>& command);
    /// Kills what still runs.
    ~InTerminal();
    InTerminal(const InTerminal&) = delete;
    InTerminal& operator=(const InTerminal&) = delete;

    /// Waits until the program has printed the text; false when it ended without.
    bool wait_for(const std::string& text);
    void type(const std::string& keys);
    void send(int signal);
    /// Waits for its end: exit status; 128 + signal when it was killed.
    int wait();
    /// All that it printed so far.
    [[nodiscard]] const std::string& printed() const { return printed_; }

  private:
    /// False at the end.
    bool read_some();

    pid_t process_ = -1;
    int terminal_ = -1;
    std::string printed_;
};

inline const std::string kCtrlC = "\x03";

}  // namespace wallwright::test
