#include "strakebook/base/folder.h"

#include <fmt/format.h>

#include "strakebook/base/files.h"
#include "strakebook/base/tidy_path.h"

namespace strakebook::base {

namespace fs = std::filesystem;

namespace {

/// What an empty path to a folder means.
fs::path of_the_day(const fs::path &path) { return path.empty() ? fs::path(".") : path; }

} // namespace

Folder::Folder(fs::path on_disk) : on_disk_(std::move(on_disk)), seen_(std::make_shared<FileSet>()) {}

Folder Folder::kept(FileSet files) {
  Folder folder{fs::path()};
  folder.on_disk_.reset();
  folder.kept_ = std::make_shared<const FileSet>(std::move(files));
  return folder;
}

bool Folder::holds(std::string_view relative) const {
  if (on_disk_)
    return inside(of_the_day(*on_disk_), relative).has_value();
  const fs::path path(tidy_path(relative));
  return !relative.empty() && relative.find('\0') == relative.npos && !path.is_absolute() && *path.begin() != "..";
}

bool Folder::has(std::string_view relative) const {
  std::error_code failed;
  if (on_disk_)
    return fs::is_regular_file(*on_disk_ / relative, failed);
  return kept_->contains(prefix_ + tidy_path(relative));
}

std::optional<std::string> Folder::read(std::string_view relative, std::size_t max_bytes, const SourceSpan &from, Diagnostics &sink) const {
  if (!holds(relative)) {
    sink.error(Code::path_escapes, from, fmt::format("\"{}\" leaves the folder", relative), "a path inside the folder");
    return std::nullopt;
  }
  std::optional<std::string> bytes;
  if (on_disk_) {
    bytes = read_file(*on_disk_ / relative, max_bytes, from, sink);
  } else if (const auto found = kept_->find(prefix_ + tidy_path(relative)); found == kept_->end()) {
    sink.error(Code::file_unreadable, from, fmt::format("{} is not among the files that were kept", shown(relative)));
  } else if (found->second.size() > max_bytes) {
    sink.error(Code::file_too_large, from, fmt::format("{} is larger than {} bytes, which is the most that is read", shown(relative), max_bytes));
  } else {
    bytes = found->second;
  }
  if (bytes)
    seen_->insert_or_assign(prefix_ + tidy_path(relative), *bytes);
  return bytes;
}

SourcePtr Folder::source(std::string_view relative, const SourceSpan &from, Diagnostics &sink) const {
  auto bytes = read(relative, most_source_bytes, from, sink);
  if (!bytes)
    return nullptr;
  return std::make_shared<const SourceFile>(SourceFile{shown(relative), std::move(*bytes)});
}

std::vector<std::string> Folder::names() const {
  std::set<std::string> names;
  std::error_code failed;
  if (on_disk_) {
    for (fs::directory_iterator at(of_the_day(*on_disk_), failed), end; !failed && at != end; at.increment(failed))
      names.insert(at->path().filename().string());
  } else {
    for (const auto &[path, bytes] : *kept_)
      if (path.starts_with(prefix_) && path.find('/', prefix_.size()) == path.npos)
        names.insert(path.substr(prefix_.size()));
  }
  return {names.begin(), names.end()};
}

Folder Folder::in(std::string_view name) const {
  Folder inner = *this;
  if (on_disk_)
    inner.on_disk_ = *on_disk_ / name;
  inner.prefix_ += std::string(name) + "/";
  return inner;
}

Folder Folder::unread() const {
  Folder same = *this;
  same.seen_ = std::make_shared<FileSet>();
  return same;
}

std::string Folder::shown(std::string_view relative) const {
  return on_disk_ ? (*on_disk_ / relative).string() : prefix_ + std::string(relative);
}

} // namespace strakebook::base
