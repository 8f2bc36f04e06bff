#pragma once

#include <cstddef>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"

namespace strakebook::base {

/// Files by their path inside a folder: "readings/hull.csv".
using FileSet = std::map<std::string, std::string>;

/// A folder that a report is read from: one on the disk, or files kept in memory. A path into it never leaves it. What was read of
/// it is remembered, so that the same can be kept with the report; copies share that memory.
class Folder {
public:
  Folder(std::filesystem::path on_disk); ///< empty: the folder of the day
  Folder(const char *on_disk) : Folder(std::filesystem::path(on_disk)) {}
  static Folder kept(FileSet files);

  /// May the path name a file of this folder? Not if it is empty, absolute, or leaves it, also through links.
  bool holds(std::string_view relative) const;
  /// Is there a regular file?
  bool has(std::string_view relative) const;
  /// The whole file. On failure adds file_unreadable, file_too_large, or path_escapes at `from` and returns nullopt.
  std::optional<std::string> read(std::string_view relative, std::size_t max_bytes, const SourceSpan &from, Diagnostics &sink) const;
  /// The same, kept as a source for diagnostics.
  SourcePtr source(std::string_view relative, const SourceSpan &from, Diagnostics &sink) const;
  /// Names of the files that lie directly in it, in order.
  std::vector<std::string> names() const;
  /// A folder in this one; it need not exist. What is read of it counts as read of this one.
  Folder in(std::string_view name) const;
  /// The same folder, of which nothing has been read yet.
  Folder unread() const;
  /// A path into it as the user should see it.
  std::string shown(std::string_view relative) const;
  /// Where it is on the disk; nullopt if it is kept in memory.
  const std::optional<std::filesystem::path> &on_disk() const { return on_disk_; }

  /// Everything read so far, as it was.
  const FileSet &seen() const { return *seen_; }

private:
  std::optional<std::filesystem::path> on_disk_;
  std::shared_ptr<const FileSet> kept_;
  std::string prefix_; ///< of a folder in another: "layouts/"
  std::shared_ptr<FileSet> seen_;
};

/// A file and the folder that everything it names lies in.
struct FileInFolder {
  Folder folder;
  std::string name;

  FileInFolder(Folder in, std::string called) : folder(std::move(in)), name(std::move(called)) {}
  FileInFolder(const std::filesystem::path &file) : folder(file.parent_path()), name(file.filename().string()) {}
};

} // namespace strakebook::base
