#include "cli/arguments.h"
#include "cli/commands.h"

int main(int argc, char **argv) { return strakebook::cli::run_guarded(argc, argv); }
