#include "cli/commands.h"

#include <algorithm>
#include <cstdio>
#include <exception>
#include <string_view>

#include <fmt/format.h>

#include "cli/assessment_text.h"
#include "strakebook/base/files.h"
#include "strakebook/report.h"

namespace strakebook::cli {

namespace fs = std::filesystem;

namespace {

bool is_io(base::Code code) {
  using enum base::Code;
  return code == file_unreadable || code == output_failed;
}

Exit exit_for(const base::Diagnostics &sink) {
  if (sink.ok()) return Exit::written;
  const auto &all = sink.all();
  const bool io = std::any_of(all.begin(), all.end(), [](const base::Diagnostic &d) {
    return d.severity == base::Severity::error && is_io(d.code);
  });
  return io ? Exit::io : Exit::refused;
}

Exit print(std::string_view text) {
  const bool whole = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  return whole ? Exit::written : Exit::io;
}

std::string shown(const base::Diagnostics &sink, const std::string &format) {
  if (format == "json") return base::json_text(sink);
  return sink.all().empty() ? std::string() : base::terminal_text(sink);
}

Exit finish(const base::Diagnostics &sink, const std::string &format) {
  const std::string text = shown(sink, format);
  std::fwrite(text.data(), 1, text.size(), stderr);
  return exit_for(sink);
}

Resources resources_of(const Arguments &arguments) {
  Resources resources = installed_resources();
  if (!arguments.layouts.empty()) resources.layouts = arguments.layouts;
  if (!arguments.fonts.empty()) resources.fonts = arguments.fonts;
  return resources;
}

/// Everything a command that shows pages needs; pages are absent when something is wrong.
struct Set {
  std::optional<Case> opened;
  std::optional<page::Document> pages;
};

Set open_and_set(const Arguments &arguments, base::Diagnostics &sink) {
  const Resources resources = resources_of(arguments);
  Set set{.opened = open_case(arguments.survey, resources, sink)};
  if (set.opened && sink.ok()) set.pages = set_pages(*set.opened, resources, sink);
  return set;
}

Exit check(const Arguments &arguments) {
  base::Diagnostics sink;
  open_and_set(arguments, sink);
  const std::string text = arguments.format == "json" ? base::json_text(sink) : base::terminal_text(sink);
  const Exit printed = print(text);
  return printed == Exit::written ? exit_for(sink) : printed;
}

Exit assess(const Arguments &arguments) {
  base::Diagnostics sink;
  const auto opened = open_case(arguments.survey, resources_of(arguments), sink);
  if (!opened || !sink.ok()) return finish(sink, arguments.format);
  const Exit printed = print(arguments.format == "json" ? assessment_json(*opened)
                                                        : assessment_text(opened->survey, opened->assessment));
  return printed == Exit::written ? finish(sink, "text") : printed;
}

/// The output would replace something that the report is made from.
bool is_input(const Case &the_case, const Arguments &arguments, base::Diagnostics &sink) {
  const fs::path folder = arguments.survey.parent_path();
  for (const auto &input : the_case.inputs) {
    const fs::path file = input.kind == "survey" ? arguments.survey : input.kind == "layout" ? fs::path(input.path) : folder / input.path;
    std::error_code unknown;
    if (!fs::equivalent(file, arguments.output, unknown)) continue;
    sink.add({.code = base::Code::output_failed,
              .message = "the output " + arguments.output.string() + " is one of the report's own inputs",
              .expected = "a file that the survey does not read",
              .write = "-o " + (folder / "report.pdf").string()});
    return true;
  }
  return false;
}

Exit typeset(const Arguments &arguments) {
  base::Diagnostics sink;
  const Set set = open_and_set(arguments, sink);
  if (set.pages) {
    const std::string bytes = pdf_of(*set.pages, *set.opened, sink);
    if (sink.ok() && !is_input(*set.opened, arguments, sink)) base::write_atomically(arguments.output, bytes, sink);
  }
  return finish(sink, arguments.format);
}

void write_pages(const Set &set, const Arguments &arguments, base::Diagnostics &sink) {
  std::error_code failed;
  fs::create_directories(arguments.output, failed);
  for (std::size_t i = 0; i < set.pages->pages.size() && sink.ok(); ++i)
    base::write_atomically(arguments.output / fmt::format("page-{:03}.png", i + 1),
                           png_of(*set.pages, i, *set.opened, arguments.dpi), sink);
}

Exit preview(const Arguments &arguments) {
  base::Diagnostics sink;
  const Set set = open_and_set(arguments, sink);
  if (set.pages) write_pages(set, arguments, sink);
  return finish(sink, arguments.format);
}

} // namespace

Exit run(const Arguments &arguments) {
  switch (arguments.command) {
  case Command::check: return check(arguments);
  case Command::assess: return assess(arguments);
  case Command::typeset: return typeset(arguments);
  case Command::preview: return preview(arguments);
  case Command::schema: return print(survey_schema());
  case Command::skeleton: return print(survey_skeleton());
  case Command::none: break;
  }
  return Exit::usage;
}

int run_guarded(int argc, const char *const *argv) {
  try {
    const Parsed parsed = parse_arguments(argc, argv);
    return static_cast<int>(parsed.act ? run(parsed.arguments) : parsed.exit);
  } catch (const std::exception &fault) {
    fmt::print(stderr, "strakebook: a fault of the program: {}\nNothing was written. Please report it with the survey "
                       "that caused it.\n", fault.what());
    return static_cast<int>(Exit::internal);
  }
}

} // namespace strakebook::cli
