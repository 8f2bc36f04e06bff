#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "cli/page_choice.h"
#include "strakebook/issuing.h"

namespace strakebook::cli {

/// Exit codes of every command.
enum class Exit { written = 0, refused = 1, usage = 2, io = 3, verification = 4, internal = 5 };

enum class Command { none, check, assess, quantities, typeset, issue, verify, compare, preview, schema, skeleton };

struct Arguments {
  Command command = Command::none;
  std::filesystem::path survey, output;
  std::filesystem::path before, after; ///< what compare is given
  std::string format = "text"; ///< "text" or "json"; of quantities "csv" too
  std::filesystem::path layouts, fonts; ///< empty: the installed ones
  std::string addendum; ///< to be issued; empty: the report itself
  // Who signs (key_arguments.h).
  std::filesystem::path key, certificate, passphrase_file; ///< key empty: nobody; a passphrase file "-": standard input
  // What preview draws.
  std::string picture = "png";      ///< "png" or "svg"
  int dpi = 80;                     ///< of a PNG
  double margin = 6;                ///< points of white round a figure
  std::vector<PageRange> pages;     ///< empty, and no figures: all
  std::vector<std::string> figures; ///< ids or printed labels
  bool watch = false;
  // What verify looks at.
  std::filesystem::path document;
  VerifyOptions verify;
};

/// The outcome of reading the command line: arguments to act on, or an exit code because help or an error was printed.
struct Parsed {
  Arguments arguments;
  bool act = false;
  Exit exit = Exit::usage;
};
Parsed parse_arguments(int argc, const char *const *argv);

} // namespace strakebook::cli
