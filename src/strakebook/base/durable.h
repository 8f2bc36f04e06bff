#pragma once

#include <cerrno>
#include <filesystem>
#include <string_view>

/// Steps that reach the disk before they return. Each is true when done; false leaves the reason in errno.
namespace strakebook::base {

/// All bytes, however few the system takes at a time.
bool write_all(int fd, std::string_view bytes);
/// The names that an open folder holds. A file system that cannot do that is not a failure.
bool sync_folder(int fd);
bool sync_folder(const std::filesystem::path &folder);

/// A new file with these bytes, on the disk; its name is there for sure only once its folder is synced. One that is there already is a
/// failure.
bool write_new_file(const std::filesystem::path &file, std::string_view bytes);

/// How the name of a file begins that write_atomically makes on its way; one that is left was left by a process that was ended.
inline constexpr std::string_view temporary_begins = ".strakebook-";

/// What a call of the system returns, made again for as long as a signal interrupts it.
template <class Call> auto uninterrupted(Call call) {
  auto result = call();
  while (result < 0 && errno == EINTR)
    result = call();
  return result;
}

} // namespace strakebook::base
