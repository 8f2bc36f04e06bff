#include "cli/session.h"

#include <algorithm>
#include <cstdio>

namespace strakebook::cli {

namespace {

bool is_io(const base::Diagnostic &d) {
  using enum base::Code;
  const bool of_the_disk = d.code == issuing_failed && d.span.line == 0; // with a line: of what the survey names
  return d.severity == base::Severity::error && (d.code == file_unreadable || d.code == output_failed || of_the_disk);
}

} // namespace

Resources resources_of(const Arguments &arguments) {
  Resources resources = installed_resources();
  if (!arguments.layouts.empty()) resources.layouts = arguments.layouts;
  if (!arguments.fonts.empty()) resources.fonts = arguments.fonts;
  return resources;
}

Opened open_and_set(const Arguments &arguments, base::Diagnostics &sink) {
  const Resources resources = resources_of(arguments);
  Opened opened{.the_case = open_case(arguments.survey, resources, sink)};
  if (opened.the_case && sink.ok()) opened.proof = set_pages(*opened.the_case, resources, sink);
  return opened;
}

std::string shown(const base::Diagnostics &sink, const std::string &format) {
  if (format == "json") return base::json_text(sink);
  return sink.all().empty() ? std::string() : base::terminal_text(sink);
}

Exit exit_for(const base::Diagnostics &sink) {
  if (sink.ok()) return Exit::written;
  return std::ranges::any_of(sink.all(), is_io) ? Exit::io : Exit::refused;
}

Exit finish(const base::Diagnostics &sink, const std::string &format) {
  const std::string text = shown(sink, format);
  std::fwrite(text.data(), 1, text.size(), stderr);
  return exit_for(sink);
}

} // namespace strakebook::cli
