#include <csignal>

#include "cli/commands.h"

int main(int argc, char **argv) {
  std::signal(SIGXFSZ, SIG_IGN); // a file size limit is an error of the write, not the end of the program
  return strakebook::cli::run_guarded(argc, argv);
}
