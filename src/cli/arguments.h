#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "cli/page_choice.h"

namespace strakebook::cli {

/// Exit codes of every command.
enum class Exit { written = 0, refused = 1, usage = 2, io = 3, internal = 5 };

enum class Command { none, check, assess, quantities, typeset, preview, schema, skeleton };

struct Arguments {
  Command command = Command::none;
  std::filesystem::path survey, output;
  std::string format = "text"; ///< "text" or "json"; of quantities "csv" too
  std::filesystem::path layouts, fonts; ///< empty: the installed ones
  // What preview draws.
  std::string picture = "png";      ///< "png" or "svg"
  int dpi = 80;                     ///< of a PNG
  double margin = 6;                ///< points of white round a figure
  std::vector<PageRange> pages;     ///< empty, and no figures: all
  std::vector<std::string> figures; ///< ids or printed labels
  bool watch = false;
};

/// The outcome of reading the command line: arguments to act on, or an exit code because help or an error was printed.
struct Parsed {
  Arguments arguments;
  bool act = false;
  Exit exit = Exit::usage;
};
Parsed parse_arguments(int argc, const char *const *argv);

} // namespace strakebook::cli
