#include "strakebook/base/durable.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "strakebook/base/file_descriptor.h"

namespace strakebook::base {

namespace {

constexpr mode_t new_file_mode = 0644; // the system takes the umask off

} // namespace

bool write_all(int fd, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t done = uninterrupted([&] { return ::write(fd, bytes.data(), bytes.size()); });
    if (done < 0)
      return false;
    bytes.remove_prefix(static_cast<std::size_t>(done));
  }
  return true;
}

bool sync_folder(int fd) { return uninterrupted([&] { return ::fsync(fd); }) == 0 || errno == EINVAL || errno == ENOTSUP; }

bool sync_folder(const std::filesystem::path &folder) {
  const FileDescriptor fd(uninterrupted([&] { return ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC); }));
  return fd.open() && sync_folder(fd.get());
}

bool write_new_file(const std::filesystem::path &file, std::string_view bytes) {
  FileDescriptor fd(uninterrupted([&] { return ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, new_file_mode); }));
  return fd.open() && write_all(fd.get(), bytes) && uninterrupted([&] { return ::fsync(fd.get()); }) == 0 && fd.close();
}

} // namespace strakebook::base
