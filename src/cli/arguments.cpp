#include "cli/arguments.h"

#include <CLI/CLI.hpp>

#include "cli/key_arguments.h"
#include "cli/verify.h"
#include "strakebook/report.h"

namespace strakebook::cli {

namespace {

constexpr auto about =
    "Turns a surveyor's own readings, words and decisions into a typeset hull thickness report.\n"
    "It computes, shows, checks and typesets; it never writes a finding, and it refuses silence where a\n"
    "reason is due. It is not a judgement: the surveyor decides, and local codes and licensed practice govern.";

constexpr auto epilogue =
    "A first evening:\n"
    "  strakebook skeleton > survey.yaml          a commented survey to fill in\n"
    "  strakebook check survey.yaml               everything that is wrong or missing, with its place\n"
    "  strakebook typeset survey.yaml -o out.pdf  the report\n\n"
    "Exit status: 0 written (or nothing wrong), 1 the input was refused, 2 wrong usage, 3 a file could not\n"
    "be read or written, 4 a report that is not as it was issued, 5 a fault of the program. Nothing but the\n"
    "named output is ever written (by issue, the folder \"issued\"), and on any error it is left as it was; of a\n"
    "folder of pictures, each one is whole or as it was.";

void add_folders(CLI::App &command, Arguments &to) {
  command.add_option("--layouts", to.layouts, "folder of layouts to use instead of the installed ones");
  command.add_option("--fonts", to.fonts, "folder of fonts to use instead of the installed ones");
}

void add_survey(CLI::App &command, Arguments &to) {
  command.add_option("SURVEY", to.survey, "the survey file (YAML); its readings and photographs lie beside it")
      ->required();
  add_folders(command, to);
}

void add_format(CLI::App &command, Arguments &to, const char *what) {
  command.add_option("--format", to.format, what)->check(CLI::IsMember({"text", "json"}))->capture_default_str();
}

constexpr auto diagnostics_form = "form of what is wrong: text for people, json for programs";

void add_check(CLI::App &app, Arguments &to) {
  auto *check = app.add_subcommand("check", "Read and check a survey; list everything wrong, missing or unanswered");
  add_survey(*check, to);
  add_format(*check, to, diagnostics_form);
  check->callback([&to] { to.command = Command::check; });
}

void add_assess(CLI::App &app, Arguments &to) {
  auto *assess = app.add_subcommand("assess", "Print everything computed from the readings: losses, criteria, coverage");
  add_survey(*assess, to);
  add_format(*assess, to, "text for people, json for programs (lengths are decimal strings in mm)");
  assess->callback([&to] { to.command = Command::assess; });
}

void add_quantities(CLI::App &app, Arguments &to) {
  auto *quantities = app.add_subcommand("quantities", "Print every weight, volume and level reckoned, with its formula and what went in");
  add_survey(*quantities, to);
  quantities->add_option("--format", to.format,
                         "text for people, json for programs, csv for a spreadsheet (no cell of it is taken for a formula)")
      ->check(CLI::IsMember({"text", "json", "csv"}))->capture_default_str();
  quantities->callback([&to] { to.command = Command::quantities; });
}

void add_compare(CLI::App &app, Arguments &to) {
  auto *compare = app.add_subcommand("compare", "List what differs between two surveys or issued reports, by meaning: readings, decisions, words");
  const char *either = "a survey file, or the PDF of an issued report with its inputs";
  compare->add_option("BEFORE", to.before, either)->required();
  compare->add_option("AFTER", to.after, either)->required();
  compare->add_option("--layouts", to.layouts, "folder of layouts to use instead of the installed ones");
  add_format(*compare, to, "text for people, json for programs");
  compare->callback([&to] { to.command = Command::compare; });
}

void add_typeset(CLI::App &app, Arguments &to) {
  auto *typeset = app.add_subcommand("typeset", "Typeset the report as a PDF, marked \"not issued\" on every page");
  add_survey(*typeset, to);
  typeset->add_option("-o,--output", to.output, "the PDF to write")->required();
  add_format(*typeset, to, diagnostics_form);
  typeset->callback([&to] { to.command = Command::typeset; });
}

std::string addendum_fault(const std::string &text) {
  const bool number = !text.empty() && text.find_first_not_of("0123456789") == text.npos && text.front() != '0';
  return number ? std::string() : "\"" + text + "\" is not the number of an addendum: 1, 2 ...";
}

void add_issue(CLI::App &app, Arguments &to) {
  auto *issue = app.add_subcommand("issue", "Issue a final report: into the folder \"issued\" beside the survey, for good");
  add_survey(*issue, to);
  const CLI::Validator number([](const std::string &text) { return addendum_fault(text); }, "NUMBER", "addendum");
  issue->add_option("--addendum", to.addendum, "issue this addendum to the issue that stands, by its number, not the report")->check(number);
  add_key(*issue, to);
  add_format(*issue, to, diagnostics_form);
  issue->callback([&to] { to.command = Command::issue; });
}

void add_choice(CLI::App &preview, Arguments &to) {
  const CLI::Validator pages(page_ranges_fault, "PAGES", "page choice");
  preview.add_option_function<std::string>(
             "--pages", [&to](const std::string &text) { to.pages = page_ranges(text).value(); },
             "only these pages: 3,5-7")
      ->check(pages);
  preview.add_option("--figure", to.figures,
                     "only this figure or photograph, cut out: its id (figure/map) or its label as printed (\"Figure 6.1\"); may be\n"
                     "given more than once; a name that is not there lists all that are")
      ->allow_extra_args(false);
  preview.add_option("--margin", to.margin, "points of white kept round a figure")->check(CLI::Range(0, 72))->capture_default_str();
}

void add_preview(CLI::App &app, Arguments &to) {
  auto *preview = app.add_subcommand("preview", "Draw the same pages as pictures: page-001.png, page-002.png ...");
  add_survey(*preview, to);
  preview->add_option("-o,--output", to.output, "the folder to write them to (made if it is not there)")->required();
  preview->add_option("--picture", to.picture, "kind of picture; svg has its text as outlines, with words for those who cannot see it")
      ->check(CLI::IsMember({"png", "svg"}))->capture_default_str();
  preview->add_option("--dpi", to.dpi, "pixels an inch of a png")->check(CLI::Range(20, 600))->capture_default_str();
  add_choice(*preview, to);
  preview->add_flag("--watch", to.watch,
                    "go on, and draw again whenever a file in the survey's folder or a layout is saved with other content;\n"
                    "while anything is wrong the last good pictures stay; Ctrl-C ends it");
  add_format(*preview, to, diagnostics_form);
  preview->callback([&to] { to.command = Command::preview; });
}

void add_plain(CLI::App &app, Arguments &to) {
  app.add_subcommand("schema", "Print the JSON Schema of the survey file")->callback([&to] {
    to.command = Command::schema;
  });
}

void add_skeleton(CLI::App &app, Arguments &to) {
  auto *skeleton = app.add_subcommand("skeleton", "Print a commented survey file to fill in");
  skeleton->add_option("--after", to.survey,
                       "the last survey of the same boat: her particulars, datum, zones and rows are kept, its readings become an\n"
                       "earlier survey, and its open items are carried on");
  add_folders(*skeleton, to);
  skeleton->callback([&to] { to.command = Command::skeleton; });
}

} // namespace

Parsed parse_arguments(int argc, const char *const *argv) {
  Parsed parsed;
  CLI::App app{about, "strakebook"};
  app.footer(epilogue);
  app.set_version_flag("--version", tool_name());
  app.require_subcommand(1);
  for (auto add : {add_check, add_assess, add_quantities, add_typeset, add_issue, add_verify, add_compare, add_preview, add_plain, add_skeleton}) add(app, parsed.arguments);
  try {
    app.parse(argc, argv);
    parsed.act = true;
  } catch (const CLI::ParseError &error) {
    parsed.exit = app.exit(error) == 0 ? Exit::written : Exit::usage;
  }
  return parsed;
}

} // namespace strakebook::cli
