#pragma once

#include <string>
#include <utility>

#include <unistd.h>

namespace strakebook::base {

/// Owns a file descriptor of the system; -1: none.
class FileDescriptor {
public:
  explicit FileDescriptor(int fd) : fd_(fd) {}
  FileDescriptor(FileDescriptor &&o) noexcept : fd_(std::exchange(o.fd_, -1)) {}
  FileDescriptor &operator=(FileDescriptor &&) = delete;
  ~FileDescriptor() {
    if (fd_ >= 0)
      ::close(fd_);
  }

  bool open() const { return fd_ >= 0; }
  int get() const { return fd_; }
  bool close() {
    return ::close(std::exchange(fd_, -1)) == 0;
  } ///< closes now; false: the system reports a failed write

private:
  int fd_;
};

/// The system's words for an error number ("No space left on device"), the same in every locale.
std::string system_words(int error_number);

} // namespace strakebook::base
