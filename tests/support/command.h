// Runs another program, for checks against the outside and for tests of the command line.
#pragma once

#include <string>

namespace wallwright::test {

struct Ran {
    int status = 0;  ///< Exit status; 128 + signal when it was killed.
    std::string out;
    std::string err;
};

/// By the shell, with no input. Fails the test when the shell cannot be started.
Ran run(const std::string& command);

/// A folder that is new, empty, and gone when this is.
class ScratchFolder {
  public:
    ScratchFolder();
    ~ScratchFolder();
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;

    [[nodiscard]] const std::string& path() const { return path_; }
    [[nodiscard]] std::string file(const std::string& name) const { return path_ + "/" + name; }

  private:
    std::string path_;
};

std::string read_whole(const std::string& path);
void write_whole(const std::string& path, const std::string& text);

}  // namespace wallwright::test
