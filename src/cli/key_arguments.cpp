#include "cli/key_arguments.h"

#include <CLI/CLI.hpp>

namespace strakebook::cli {

void add_key(CLI::App &command, Arguments &to) {
  auto *key = command.add_option("--key", to.key,
                                 "sign with this key of your own: PKCS#12 (.p12, .pfx), or PEM; it is read for this run and kept nowhere");
  command.add_option("--certificate", to.certificate, "the key's certificate (PEM), where it does not stand in the key's file")->needs(key);
  command.add_option("--passphrase-file", to.passphrase_file,
                     "a file whose first line is the key's passphrase, \"-\" for standard input; without it a locked key is asked\n"
                     "for at the terminal, unseen")
      ->needs(key);
}

} // namespace strakebook::cli
