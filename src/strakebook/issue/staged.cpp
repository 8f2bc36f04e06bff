#include "strakebook/issue/staged.h"

#include <algorithm>
#include <cerrno>
#include <system_error>

#include <fmt/format.h>

#include "strakebook/base/durable.h"
#include "strakebook/base/file_descriptor.h"

namespace strakebook::issue {

namespace fs = std::filesystem;

namespace {

fs::path begun(const fs::path &issued, const std::string &name) { return issued / (std::string(begun_begins) + name); }

/// The folders that a file's path leads through, outermost first.
std::vector<fs::path> folders_of(const fs::path &file) {
  std::vector<fs::path> out;
  for (fs::path folder = file.parent_path(); !folder.empty(); folder = folder.parent_path())
    out.insert(out.begin(), folder);
  return out;
}

bool make_folder(const fs::path &folder) {
  std::error_code failed;
  fs::create_directory(folder, failed);
  errno = failed.value();
  return !failed;
}

/// Every file and folder, each on the disk before its folder is. What cannot be done is left in `at` and errno.
bool write_all_files(const fs::path &root, const base::FileSet &files, fs::path &at) {
  std::vector<fs::path> folders{root};
  for (const auto &[path, bytes] : files) {
    for (const fs::path &folder : folders_of(path))
      if (std::ranges::find(folders, root / folder) == folders.end()) {
        folders.push_back(root / folder);
        if (at = folders.back(); !make_folder(at))
          return false;
      }
    if (at = root / path; !base::write_new_file(at, bytes))
      return false;
  }
  return std::ranges::all_of(folders.rbegin(), folders.rend(), [&](const fs::path &folder) { return base::sync_folder(at = folder); });
}

bool remove(const fs::path &path, base::Diagnostics &sink) {
  std::error_code failed;
  fs::remove_all(path, failed);
  if (!failed)
    return true;
  errno = failed.value();
  cannot(path, "what an ended run left cannot be removed", sink);
  return false;
}

} // namespace

void cannot(const fs::path &at, std::string_view what, base::Diagnostics &sink) {
  const base::SourceSpan named{std::make_shared<const base::SourceFile>(base::SourceFile{at.string(), ""}), 0, 0, 1};
  sink.error(base::Code::issuing_failed, named, fmt::format("{}: {}", what, base::system_words(errno)),
             "a folder that may be written to, on a disk that works and has room", "make that so, and run the command again");
}

bool stage(const fs::path &issued, const std::string &name, const base::FileSet &files, base::Diagnostics &sink) {
  const fs::path root = begun(issued, name);
  fs::path at = root;
  if (make_folder(root) && write_all_files(root, files, at) && base::sync_folder(at = issued))
    return true;
  cannot(at, "it cannot be written, and nothing was issued", sink);
  std::error_code ignored; // the next run clears what stays
  fs::remove_all(root, ignored);
  return false;
}

bool finish(const fs::path &issued, const std::string &name, base::Diagnostics &sink) {
  std::error_code failed;
  fs::rename(begun(issued, name), issued / name, failed);
  errno = failed.value();
  if (!failed && base::sync_folder(issued))
    return true;
  cannot(issued / name, "it is issued, and the register has it, but its folder may not have its name yet; the next run gives it", sink);
  return false;
}

bool clear_up(const fs::path &issued, const std::vector<std::string> &registered, base::Diagnostics &sink) {
  std::vector<std::string> names;
  std::error_code failed;
  for (fs::directory_iterator at(issued, failed), end; !failed && at != end; at.increment(failed))
    names.push_back(at->path().filename().string());
  std::ranges::sort(names);
  for (const std::string &name : names) {
    if (name.starts_with(base::temporary_begins) && !remove(issued / name, sink))
      return false;
    if (!name.starts_with(begun_begins))
      continue;
    const std::string final_name = name.substr(begun_begins.size());
    if (std::ranges::find(registered, final_name) != registered.end() ? !finish(issued, final_name, sink) : !remove(issued / name, sink))
      return false;
  }
  errno = failed.value();
  if (!failed && base::sync_folder(issued))
    return true;
  cannot(issued, "it cannot be looked through", sink);
  return false;
}

} // namespace strakebook::issue
