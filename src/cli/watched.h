#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace strakebook::cli {

/// What a file was when it was last looked at.
struct FileState {
  long long modified_ns = 0;
  unsigned long long size = 0, inode = 0;
  std::string digest; ///< SHA-256 of its content; empty where it cannot be read
};

using Look = std::map<std::filesystem::path, FileState>;

/// All regular files under the folders now, without hidden ones and without those that `ignored` names. A digest of
/// `before` is used again where neither time, size nor inode of the file have changed.
Look look_at(const std::vector<std::filesystem::path> &folders,
             const std::function<bool(const std::filesystem::path &)> &ignored, const Look &before);

/// The same files with the same content: a file that was saved again as it was counts as the same.
bool same_content(const Look &a, const Look &b);

} // namespace strakebook::cli
