#include "cli/issue.h"

#include <fmt/format.h>

#include "cli/passphrase.h"
#include "cli/session.h"
#include "strakebook/issuing.h"

namespace strakebook::cli {

namespace {

std::string told(const Delivered &delivered) {
  std::string text = fmt::format("{}: {}\n", delivered.again ? "already issued" : "issued", delivered.document.string());
  for (const auto &file : delivered.beside) text += fmt::format("  beside it: {}\n", file.string());
  return text;
}

} // namespace

Exit issue(const Arguments &arguments) {
  base::Diagnostics sink;
  const auto signer = signer_of(arguments, sink);
  if (!sink.ok()) return finish(sink, arguments.format);
  const auto *by = signer ? &*signer : nullptr;
  const Resources resources = resources_of(arguments);
  const auto delivered = arguments.addendum.empty() ? issue_report(arguments.survey, resources, by, sink)
                                                    : issue_addendum(arguments.survey, arguments.addendum, resources, by, sink);
  const Exit ended = finish(sink, arguments.format);
  if (!delivered) return ended;
  const std::string text = told(*delivered);
  const bool whole = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  return whole ? ended : Exit::io;
}

} // namespace strakebook::cli
