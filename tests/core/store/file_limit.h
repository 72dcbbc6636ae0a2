#pragma once
// Writes that find no room.

#include <signal.h>
#include <sys/resource.h>

namespace wg::store::test {

// No file of this program grows beyond a size while it lives: the system refuses the write.
class FileLimit {
   public:
    explicit FileLimit(rlim_t bytes) {
        signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit limit{bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FileLimit() { setrlimit(RLIMIT_FSIZE, &before_); }
    FileLimit(const FileLimit&) = delete;
    FileLimit& operator=(const FileLimit&) = delete;

   private:
    rlimit before_{};
};

}  // namespace wg::store::test
