#include "desk/file_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace wallwright::desk {

std::shared_ptr<const FileLock> FileLock::take(const std::filesystem::path& file) {
    constexpr mode_t kOwnerOnly = 0600;
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, kOwnerOnly);
    if (descriptor < 0)
        return nullptr;
    std::shared_ptr<const FileLock> lock(new FileLock(descriptor));
    return ::flock(descriptor, LOCK_EX | LOCK_NB) == 0 ? lock : nullptr;
}

FileLock::~FileLock() {
    ::close(descriptor_);
}

}  // namespace wallwright::desk
