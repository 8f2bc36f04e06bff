#include "cli/verify.h"

#include <cstdio>

#include <CLI/CLI.hpp>

#include "cli/session.h"
#include "strakebook/issuing.h"

namespace strakebook::cli {

void add_verify(CLI::App &app, Arguments &to) {
  auto *verify = app.add_subcommand("verify", "Say what an issued PDF is, whether a later issue replaces it, and whether anything of it was altered");
  verify->add_option("PDF", to.document, "the PDF as it was received")->required();
  verify->add_option("--register", to.verify.register_file, "the register to hold it against; else register.txt beside it or one folder up");
  verify->add_option("--inputs", to.verify.inputs, "folder of the kept inputs that are not attached to it; else the folder \"inputs\" beside it");
  verify->add_option("--certificate", to.verify.certificate, "certificate (PEM) that it has to be signed with, or one that has to have issued that");
  verify->add_option("--fonts", to.fonts, "folder of fonts to use instead of the installed ones");
  verify->add_option("--format", to.format, "text for people, json for programs")->check(CLI::IsMember({"text", "json"}))->capture_default_str();
  verify->callback([&to] { to.command = Command::verify; });
}

Exit verify(const Arguments &arguments) {
  base::Diagnostics sink;
  const auto found = verify_document(arguments.document, arguments.verify, resources_of(arguments), sink);
  if (!found) return finish(sink, arguments.format);
  const auto text = arguments.format == "json" ? verification_json(*found) : verification_text(*found);
  if (std::fwrite(text.data(), 1, text.size(), stdout) != text.size() || std::fflush(stdout) != 0) return Exit::io;
  return found->broken() ? Exit::verification : Exit::written;
}

} // namespace strakebook::cli
