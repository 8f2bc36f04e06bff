#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace house_rules {

namespace fs = std::filesystem;

inline const fs::path root = STRAKEBOOK_ROOT;

inline std::string read(const fs::path &path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

inline std::vector<std::string> lines_of(const std::string &text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

/// Every regular file under `folder`; C++ files only where `code`.
inline std::vector<fs::path> files_under(const fs::path &folder, bool code) {
  std::vector<fs::path> found;
  for (const auto &entry : fs::recursive_directory_iterator(folder)) {
    const auto kind = entry.path().extension();
    if (entry.is_regular_file() && (!code || kind == ".h" || kind == ".cpp")) found.push_back(entry.path());
  }
  return found;
}

} // namespace house_rules
