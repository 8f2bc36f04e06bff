#include "strakebook/base/files.h"

#include <algorithm>
#include <cerrno>
#include <system_error>

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include "strakebook/base/file_descriptor.h"

namespace strakebook::base {
namespace {

std::string too_large_words(const std::string &name, std::size_t most) {
  return fmt::format("{} is larger than {} bytes, which is the most that is read", name, most);
}

/// Everything up to one byte more than `most`, so that a file that grows meanwhile is noticed.
std::optional<std::string> read_all(int fd, std::size_t expected, std::size_t most) {
  std::string bytes;
  bytes.resize(std::min(expected, most) + 1);
  for (std::size_t have = 0;;) {
    const ssize_t got = ::read(fd, bytes.data() + have, bytes.size() - have);
    if (got < 0 && errno == EINTR)
      continue;
    if (got < 0)
      return std::nullopt;
    have += static_cast<std::size_t>(got);
    if (got == 0 || have > most) {
      bytes.resize(have);
      return bytes;
    }
    if (have == bytes.size())
      bytes.resize(std::min(2 * have, most) + 1);
  }
}

} // namespace

std::string system_words(int error_number) { return std::generic_category().message(error_number); }

std::optional<std::string> read_file(const std::filesystem::path &path, std::size_t max_bytes,
                                     const SourceSpan &from, Diagnostics &sink) {
  const std::string name = path.string();
  // Without O_NONBLOCK a named pipe would wait for a writer before it can be refused.
  const FileDescriptor fd(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  struct stat about {};
  if (!fd.open() || ::fstat(fd.get(), &about) != 0) {
    sink.error(Code::file_unreadable, from,
               fmt::format("{} cannot be opened: {}", name, system_words(errno)));
    return std::nullopt;
  }
  if (!S_ISREG(about.st_mode)) {
    sink.error(
        Code::file_unreadable, from,
        fmt::format("{} is {}, not a file", name, S_ISDIR(about.st_mode) ? "a folder" : "a device or pipe"));
    return std::nullopt;
  }
  const auto size = static_cast<std::size_t>(about.st_size);
  auto bytes = size > max_bytes ? std::string() : read_all(fd.get(), size, max_bytes);
  if (!bytes) {
    sink.error(Code::file_unreadable, from, fmt::format("{} cannot be read: {}", name, system_words(errno)));
  } else if (size > max_bytes || bytes->size() > max_bytes) {
    sink.error(Code::file_too_large, from, too_large_words(name, max_bytes));
    return std::nullopt;
  }
  return bytes;
}

SourcePtr read_source(const std::filesystem::path &path, const std::string &shown, const SourceSpan &from,
                      Diagnostics &sink) {
  auto bytes = read_file(path, most_source_bytes, from, sink);
  if (!bytes)
    return nullptr;
  return std::make_shared<const SourceFile>(SourceFile{shown, std::move(*bytes)});
}

std::optional<std::filesystem::path> inside(const std::filesystem::path &folder, std::string_view relative) {
  namespace fs = std::filesystem;
  const fs::path inner{relative};
  if (relative.empty() || relative.find('\0') != relative.npos || inner.is_absolute())
    return std::nullopt;
  const fs::path tidy = inner.lexically_normal();
  if (*tidy.begin() == "..")
    return std::nullopt;

  std::error_code error;
  const fs::path root = fs::canonical(folder, error);
  if (error)
    return std::nullopt;
  fs::path step = folder;
  for (const fs::path &part : inner) {
    step /= part;
    // A link to nothing would pass as a file that does not exist yet, and could be filled in later.
    const bool link = fs::is_symlink(fs::symlink_status(step, error));
    if (link && !fs::exists(step, error))
      return std::nullopt;
  }
  const fs::path real = fs::weakly_canonical(step, error);
  if (error || std::mismatch(root.begin(), root.end(), real.begin(), real.end()).first != root.end())
    return std::nullopt;
  return folder / inner;
}

} // namespace strakebook::base
