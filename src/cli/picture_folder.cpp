#include "cli/picture_folder.h"

#include <algorithm>

#include "strakebook/base/digest.h"
#include "strakebook/base/files.h"

namespace strakebook::cli {

namespace fs = std::filesystem;

PictureFolder::Kept PictureFolder::keep(const std::vector<NamedPicture> &pictures, base::Diagnostics &sink) {
  Kept kept;
  std::error_code failed;
  fs::create_directories(folder_, failed); // a folder that cannot be made is reported by the first write
  for (const auto &picture : pictures) {
    const std::string digest = base::sha256_hex(picture.bytes);
    const auto known = digests_.find(picture.name);
    if (known != digests_.end() && known->second == digest && fs::exists(folder_ / picture.name, failed)) {
      ++kept.same;
      continue;
    }
    if (!base::write_atomically(folder_ / picture.name, picture.bytes, sink)) return kept;
    digests_[picture.name] = digest;
    ++kept.written;
  }
  for (auto it = digests_.begin(); it != digests_.end();) {
    const bool wanted = std::ranges::any_of(pictures, [&](const NamedPicture &p) { return p.name == it->first; });
    if (!wanted && fs::remove(folder_ / it->first, failed)) ++kept.removed;
    it = wanted ? std::next(it) : digests_.erase(it);
  }
  return kept;
}

bool PictureFolder::wrote(const fs::path &file) const {
  std::error_code failed;
  return digests_.count(file.filename().string()) > 0 && fs::equivalent(file.parent_path(), folder_, failed);
}

} // namespace strakebook::cli
