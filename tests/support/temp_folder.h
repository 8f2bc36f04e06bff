#pragma once

#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <stdlib.h>

namespace support {

/// A folder of its own for one test, gone afterwards.
class TempFolder {
public:
  TempFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "strakebook-test-XXXXXX").string();
    if (!mkdtemp(name.data())) throw std::runtime_error("no folder can be made for a test: " + name);
    path = name;
  }
  ~TempFolder() {
    std::error_code failed;
    std::filesystem::remove_all(path, failed);
  }
  TempFolder(const TempFolder &) = delete;
  TempFolder &operator=(const TempFolder &) = delete;

  /// Writes a file, in folders made for it where `name` has any.
  std::filesystem::path write(const std::string &name, std::string_view bytes) const {
    const auto file = path / name;
    std::filesystem::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary) << bytes;
    return file;
  }

  std::vector<std::string> names() const {
    std::vector<std::string> out;
    for (const auto &entry : std::filesystem::directory_iterator(path)) out.push_back(entry.path().filename().string());
    return out;
  }

  std::filesystem::path path;
};

} // namespace support
