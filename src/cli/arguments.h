#pragma once

#include <filesystem>
#include <string>

namespace strakebook::cli {

/// Exit codes of every command.
enum class Exit { written = 0, refused = 1, usage = 2, io = 3, internal = 5 };

enum class Command { none, check, assess, typeset, preview, schema, skeleton };

struct Arguments {
  Command command = Command::none;
  std::filesystem::path survey, output;
  std::string format = "text"; ///< "text" or "json"
  std::filesystem::path layouts, fonts; ///< empty: the installed ones
  int dpi = 80;
};

/// The outcome of reading the command line: arguments to act on, or an exit code because help or an error was printed.
struct Parsed {
  Arguments arguments;
  bool act = false;
  Exit exit = Exit::usage;
};
Parsed parse_arguments(int argc, const char *const *argv);

} // namespace strakebook::cli
