// A lock that one running program holds and that ends with it.
#pragma once

#include <filesystem>
#include <memory>

namespace wallwright::desk {

/// flock(2) on a file of its own, held while the object lives.
class FileLock {
  public:
    /// Null when another holds it or the file cannot be made.
    static std::shared_ptr<const FileLock> take(const std::filesystem::path& file);

    FileLock(const FileLock&) = delete;
    FileLock& operator=(const FileLock&) = delete;
    ~FileLock();

  private:
    explicit FileLock(int descriptor) : descriptor_(descriptor) {}

    int descriptor_;
};

}  // namespace wallwright::desk
