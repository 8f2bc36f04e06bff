#include "cli/watched.h"

#include <algorithm>
#include <optional>

#include <sys/stat.h>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/digest.h"
#include "strakebook/base/files.h"

namespace strakebook::cli {

namespace fs = std::filesystem;

namespace {

bool hidden(const fs::path &file) { return file.filename().string().starts_with('.'); }

std::optional<FileState> state_of(const fs::path &file) {
  struct stat now{};
  if (stat(file.c_str(), &now) != 0 || !S_ISREG(now.st_mode)) return std::nullopt;
  return FileState{.modified_ns = now.st_mtim.tv_sec * 1'000'000'000LL + now.st_mtim.tv_nsec,
                   .size = static_cast<unsigned long long>(now.st_size),
                   .inode = static_cast<unsigned long long>(now.st_ino)};
}

std::string digest_of(const fs::path &file) {
  base::Diagnostics unread;
  const auto bytes = base::read_file(file, base::most_source_bytes, {}, unread);
  return bytes ? base::sha256_hex(*bytes) : std::string();
}

void add(const fs::path &file, const Look &before, Look &to) {
  auto now = state_of(file);
  if (!now) return;
  const auto then = before.find(file);
  const bool untouched = then != before.end() && then->second.modified_ns == now->modified_ns &&
                         then->second.size == now->size && then->second.inode == now->inode;
  now->digest = untouched ? then->second.digest : digest_of(file);
  to[file] = std::move(*now);
}

} // namespace

Look look_at(const std::vector<fs::path> &folders, const std::function<bool(const fs::path &)> &ignored,
             const Look &before) {
  Look now;
  std::error_code gone; // a folder or file that goes while it is looked at is simply not there
  for (const auto &folder : folders)
    for (fs::recursive_directory_iterator it(folder, gone), end; !gone && it != end; it.increment(gone)) {
      if (hidden(it->path())) it.disable_recursion_pending();
      else if (!ignored(it->path())) add(it->path(), before, now);
    }
  return now;
}

bool same_content(const Look &a, const Look &b) {
  return std::ranges::equal(a, b, [](const auto &x, const auto &y) {
    return x.first == y.first && x.second.size == y.second.size && x.second.digest == y.second.digest;
  });
}

} // namespace strakebook::cli
