#include "cli/commands.h"

#include <cstdio>
#include <exception>
#include <string_view>

#include <fmt/format.h>

#include "cli/assessment_text.h"
#include "cli/inputs.h"
#include "cli/issue.h"
#include "cli/preview.h"
#include "cli/verify.h"
#include "cli/watch.h"
#include "strakebook/base/files.h"
#include "strakebook/issuing.h"

namespace strakebook::cli {

namespace fs = std::filesystem;

namespace {

Exit print(std::string_view text) {
  const bool whole = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  return whole ? Exit::written : Exit::io;
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

std::string quantities_in(const std::string &format, const Case &opened) {
  if (format == "csv") return quantities_csv(opened);
  return format == "json" ? quantities_json(opened) : quantities_text(opened);
}

Exit quantities(const Arguments &arguments) {
  base::Diagnostics sink;
  const auto opened = open_case(arguments.survey, resources_of(arguments), sink);
  if (!opened || !sink.ok()) return finish(sink, "text");
  const Exit printed = print(quantities_in(arguments.format, *opened));
  return printed == Exit::written ? finish(sink, "text") : printed;
}

Exit compare(const Arguments &arguments) {
  base::Diagnostics sink;
  const auto comparison = compare_reports(arguments.before, arguments.after, resources_of(arguments), sink);
  if (!comparison) return finish(sink, "text");
  const Exit printed = print(arguments.format == "json" ? comparison_json(*comparison) : comparison_text(*comparison));
  return printed == Exit::written ? finish(sink, "text") : printed;
}

Exit typeset(const Arguments &arguments) {
  base::Diagnostics sink;
  const Opened opened = open_and_set(arguments, sink);
  if (opened.proof) {
    const std::string bytes = pdf_of(opened.proof->pages, *opened.the_case, sink);
    if (sink.ok() && !is_input(*opened.the_case, arguments.survey, arguments.output, sink)) base::write_atomically(arguments.output, bytes, sink);
  }
  return finish(sink, arguments.format);
}

Exit skeleton(const Arguments &arguments) {
  if (arguments.survey.empty()) return print(survey_skeleton());
  base::Diagnostics sink;
  const auto opened = open_case(arguments.survey, resources_of(arguments), sink);
  if (!opened || !sink.ok()) return finish(sink, "text");
  return print(next_skeleton(*opened));
}

Exit preview(const Arguments &arguments) {
  PictureFolder folder(arguments.output);
  if (arguments.watch) return watch(folder, arguments);
  base::Diagnostics sink;
  const Drawing drawing = draw_into(folder, arguments, sink);
  finish(sink, arguments.format);
  return drawing.exit;
}

} // namespace

Exit run(const Arguments &arguments) {
  switch (arguments.command) {
  case Command::check: return check(arguments);
  case Command::assess: return assess(arguments);
  case Command::quantities: return quantities(arguments);
  case Command::typeset: return typeset(arguments);
  case Command::issue: return issue(arguments);
  case Command::preview: return preview(arguments);
  case Command::compare: return compare(arguments);
  case Command::schema: return print(survey_schema());
  case Command::skeleton: return skeleton(arguments);
  case Command::verify: return verify(arguments);
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
