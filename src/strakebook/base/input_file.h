#pragma once

#include <string>

namespace strakebook::base {

/// A file that went into a report: what was there, and that all of it was read.
struct InputFile {
  std::string kind;   ///< "survey", "readings", "photograph", "layout"
  std::string path;   ///< as the user or the survey names it
  std::string digest; ///< SHA-256
  std::size_t bytes = 0;
  int lines = 0;      ///< data lines; 0 where lines mean nothing
  int marks = 0;      ///< marks given
};

} // namespace strakebook::base
