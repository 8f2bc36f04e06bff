#include <atomic>
#include <cerrno>
#include <cstdio>
#include <memory>

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>

#include "strakebook/base/durable.h"
#include "strakebook/base/file_descriptor.h"
#include "strakebook/base/files.h"

namespace strakebook::base {
namespace {

namespace fs = std::filesystem;

constexpr mode_t new_file_mode = 0644; // the system takes the umask off
constexpr int most_names_tried = 100;

/// The step that failed, in words; empty: all went well.
using Failure = std::string;

Failure failed(std::string_view what) { return fmt::format("{}: {}", what, system_words(errno)); }

struct Temporary {
  fs::path path;
  FileDescriptor file;
};

Temporary create_beside(const fs::path &folder) {
  static std::atomic<unsigned> counter{0};
  fs::path path;
  for (int attempt = 0; attempt < most_names_tried; ++attempt) {
    path = folder / fmt::format("{}{}-{}.tmp", temporary_begins, ::getpid(), counter++);
    const int fd = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, new_file_mode);
    if (fd >= 0 || errno != EEXIST)
      return {path, FileDescriptor(fd)};
  }
  return {path, FileDescriptor(-1)};
}

Failure fill(FileDescriptor &file, std::string_view bytes, const struct stat *as) {
  if (as && ::fchmod(file.get(), as->st_mode & 07777) != 0)
    return failed("the file's permissions cannot be kept");
  if (!write_all(file.get(), bytes))
    return failed("writing failed");
  if (uninterrupted([&] { return ::fsync(file.get()); }) != 0)
    return failed("the bytes did not reach the disk");
  if (!file.close())
    return failed("closing failed");
  return {};
}

/// `target` as it is on the disk: where a link leads, so that writing keeps the link.
fs::path behind_links(const fs::path &target) {
  std::error_code error;
  const bool link = fs::is_symlink(fs::symlink_status(target, error));
  return link ? fs::weakly_canonical(target, error) : target;
}

Failure replace(const fs::path &target, std::string_view bytes) {
  struct stat about {};
  const bool there = ::stat(target.c_str(), &about) == 0;
  if (there && !S_ISREG(about.st_mode))
    return S_ISDIR(about.st_mode) ? "it is a folder" : "it is not a regular file";
  const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
  const FileDescriptor folder_fd(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!folder_fd.open())
    return failed(fmt::format("the folder {} cannot be opened", folder.string()));
  Temporary temporary = create_beside(folder);
  if (!temporary.file.open())
    return failed("no temporary file can be made beside it");
  Failure failure = fill(temporary.file, bytes, there ? &about : nullptr);
  if (failure.empty() && ::rename(temporary.path.c_str(), target.c_str()) != 0)
    failure = failed("the finished file cannot take its name");
  if (failure.empty())
    return sync_folder(folder_fd.get()) ? Failure() : failed("the new file is in place, but the folder did not reach the disk");
  ::unlink(temporary.path.c_str());
  return failure;
}

} // namespace

bool write_atomically(const std::filesystem::path &target, std::string_view bytes, Diagnostics &sink) {
  const Failure failure = replace(behind_links(target), bytes);
  if (failure.empty())
    return true;
  const SourceSpan named{std::make_shared<const SourceFile>(SourceFile{target.string(), ""}), 0, 0, 1};
  sink.error(Code::output_failed, named, "the file was not written: " + failure, "a folder that is there, may be written to and has room",
             "another place with -o, or make room there first");
  return false;
}

} // namespace strakebook::base
