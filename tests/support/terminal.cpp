#include "support/terminal.h"

#include <pty.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <stdexcept>

namespace wallwright::test {

namespace {

constexpr int kCouldNotStart = 127;

int status_of(int status) {
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

}  // namespace

InTerminal::InTerminal(const std::vector<std::string>& command) {
    std::vector<char*> words;
    words.reserve(command.size() + 1);
    for (const std::string& word : command)
        words.push_back(const_cast<char*>(word.c_str()));
    words.push_back(nullptr);
    process_ = forkpty(&terminal_, nullptr, nullptr, nullptr);
    if (process_ < 0)
        throw std::runtime_error("no terminal could be made for " + command.front());
    if (process_ == 0) {
        // A test run behind a shell may have these ignored, and a program inherits that.
        std::signal(SIGINT, SIG_DFL);
        std::signal(SIGTERM, SIG_DFL);
        execv(words.front(), words.data());
        _exit(kCouldNotStart);
    }
}

InTerminal::~InTerminal() {
    if (process_ > 0) {
        kill(process_, SIGKILL);
        waitpid(process_, nullptr, 0);
    }
    close(terminal_);
}

bool InTerminal::wait_for(const std::string& text) {
    while (printed_.find(text) == std::string::npos)
        if (!read_some())
            return false;
    return true;
}

void InTerminal::type(const std::string& keys) {
    if (write(terminal_, keys.data(), keys.size()) != static_cast<ssize_t>(keys.size()))
        throw std::runtime_error("nothing can be typed at the terminal");
}

void InTerminal::send(int signal) {
    kill(process_, signal);
}

int InTerminal::wait() {
    while (read_some()) {
    }
    int status = 0;
    waitpid(process_, &status, 0);
    process_ = -1;
    return status_of(status);
}

bool InTerminal::read_some() {
    std::array<char, 4096> buffer{};
    ssize_t count = 0;
    do
        count = read(terminal_, buffer.data(), buffer.size());
    while (count < 0 && errno == EINTR);
    // At the program's end Linux gives EIO.
    if (count <= 0)
        return false;
    printed_.append(buffer.data(), static_cast<std::size_t>(count));
    return true;
}

}  // namespace wallwright::test
