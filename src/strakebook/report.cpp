#include "strakebook/report.h"

#include <nlohmann/json.hpp>

#include "strakebook/base/text.h"
#include "strakebook/compose/compose.h"
#include "strakebook/paper/output/output.h"
#include "strakebook/paper/typeset/font_set.h"
#include "strakebook/paper/typeset/typeset.h"
#include "strakebook/report/characters.h"
#include "strakebook/report/figures.h"
#include "strakebook/report/photographs.h"
#include "strakebook/steel/review/review.h"
#include "strakebook/steel/survey/reader.h"

namespace strakebook {

namespace fs = std::filesystem;

std::string tool_name() { return "strakebook " STRAKEBOOK_VERSION; }

Resources installed_resources() {
  std::error_code failed;
  const fs::path program = fs::read_symlink("/proc/self/exe", failed);
  const fs::path shared = program.parent_path().parent_path() / "share" / "strakebook";
  if (!failed && fs::is_directory(shared / "layouts", failed)) return {shared / "layouts", shared / "fonts"};
  const fs::path source = STRAKEBOOK_SOURCE_DIR;
  return {source / "layouts", source / "fonts"};
}

std::optional<Case> open_case(const base::FileInFolder &given, const Resources &resources, base::Diagnostics &sink) {
  const base::FileInFolder file{given.folder.unread(), given.name};
  const base::Folder layouts = resources.layouts.unread();
  const auto named = survey::house_named(file, sink);
  if (!named) return std::nullopt;
  auto house = house::read_house(named->value, layouts, file.folder, named->span, sink);
  if (!house) return std::nullopt;
  auto survey = survey::read_survey(file, house->policy, sink);
  if (!sink.ok()) return std::nullopt;

  Case the_case{.house = std::move(*house), .survey = std::move(survey), .folder = file.folder, .layouts = layouts};
  survey::check_survey(the_case.survey, the_case.house.policy, sink);
  admit_photographs(the_case, file.folder, sink);
  the_case.assessment = assess::assess(the_case.survey, the_case.house.policy, sink);
  the_case.outlook = outlook::outlook(the_case.survey, the_case.assessment, the_case.house.policy);
  review::review(the_case.survey, the_case.assessment, the_case.outlook, the_case.house.policy, sink,
                 the_case.amended ? &the_case.amended->changes : nullptr);
  return the_case;
}

static std::vector<std::string> page_names(const content::Document &document, std::size_t count) {
  std::vector<std::string> names;
  for (std::size_t page = 1; page <= count; ++page) {
    const base::Fill fills[] = {{"page", std::to_string(page)}, {"pages", std::to_string(count)}};
    names.push_back(base::filled(document.furniture.foot_right, fills));
  }
  return names;
}

std::optional<Proof> set_pages(const Case &the_case, const Resources &resources, base::Diagnostics &sink) {
  const auto &style = the_case.house.style;
  const auto fonts = typeset::FontSet::load(resources.fonts, style.faces, sink);
  const auto hyphenation = typeset::Hyphenation::load(resources.fonts, the_case.house.wording.language, sink);
  if (!fonts || !hyphenation || !sink.ok()) return std::nullopt;
  check_characters(the_case.survey, *fonts, sink);
  if (!sink.ok()) return std::nullopt;
  std::optional<compose::Before> before;
  if (the_case.before)
    before.emplace(compose::Before{the_case.before->survey, the_case.before->assessment, the_case.before->outlook});
  const auto blocks = compose::compose({.survey = the_case.survey,
                                        .assessment = the_case.assessment,
                                        .outlook = the_case.outlook,
                                        .house = the_case.house,
                                        .findings = sink,
                                        .photos = the_case.photos,
                                        .inputs = the_case.inputs,
                                        .tool = tool_name(),
                                        .issued_digest = the_case.issued_digest,
                                        .past = the_case.past,
                                        .amended = the_case.amended ? &*the_case.amended : nullptr,
                                        .before = before ? &*before : nullptr});
  base::Diagnostics setting;
  auto pages = typeset::typeset(blocks, style, *fonts, *hyphenation, setting);
  for (base::Diagnostic found : setting.all()) {
    if (found.span.line == 0) found.span = the_case.survey.span; // what no line of the survey says: the house's words
    sink.add(std::move(found));
  }
  if (!sink.ok()) return std::nullopt;
  auto names = page_names(blocks, pages.pages.size());
  return Proof{.pages = std::move(pages), .page_names = std::move(names), .figures = figures_of(blocks)};
}

std::string pdf_of(const page::Document &pages, const Case &the_case, base::Diagnostics &sink) {
  return output::pdf(pages, the_case.images, sink);
}

std::string assessment_json(const Case &the_case) {
  auto all = assess::json(the_case.survey, the_case.assessment);
  outlook::add_json(all, the_case.outlook);
  return all.dump(2) + "\n";
}

std::string survey_schema() { return survey::schema_json(); }
std::string survey_skeleton() { return survey::skeleton_yaml(); }

} // namespace strakebook
