#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"

namespace strakebook::cli {

/// A picture that is to be in the folder.
struct NamedPicture {
  std::string name; ///< "page-003.png"
  std::string bytes;
};

/// A folder of pictures that is kept in step: what is there already with the same bytes is left alone, and what an earlier
/// call wrote and the later one no longer has is taken away. Other files in the folder are never touched.
class PictureFolder {
public:
  explicit PictureFolder(std::filesystem::path folder) : folder_(std::move(folder)) {}

  struct Kept {
    int written = 0, same = 0, removed = 0;
  };
  /// Each file whole or not at all; what cannot be written is added to `sink`, and nothing is removed then.
  Kept keep(const std::vector<NamedPicture> &pictures, base::Diagnostics &sink);

  /// Whether a file is one that this object wrote.
  bool wrote(const std::filesystem::path &file) const;

private:
  std::filesystem::path folder_;
  std::map<std::string, std::string> digests_; ///< of what was written, by name
};

} // namespace strakebook::cli
