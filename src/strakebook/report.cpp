#include "strakebook/report.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "strakebook/base/text.h"
#include "strakebook/paper/output/output.h"
#include "strakebook/report/changed_marks.h"
#include "strakebook/report/comparison.h"
#include "strakebook/report/composing.h"
#include "strakebook/report/figures.h"
#include "strakebook/report/opening.h"
#include "strakebook/report/past.h"
#include "strakebook/report/photographs.h"
#include "strakebook/steel/assess/after_repair.h"
#include "strakebook/steel/review/review.h"
#include "strakebook/steel/survey/closing.h"
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

std::optional<Case> open_case(const base::FileInFolder &survey, const Resources &resources, base::Diagnostics &sink) {
  Opening opening;
  if (const auto &place = survey.folder.on_disk())
    opening.history = [&](const survey::Survey &read, base::Diagnostics &found) { return history_beside(*place, read, found); };
  return opened(survey, resources, opening, sink);
}

/// What changed since the issue that this one replaces.
static void recall(Case &the_case, const Opening &opening, base::Diagnostics &sink) {
  if (!opening.history) return;
  auto history = opening.history(the_case.survey, sink);
  the_case.past = std::move(history.issues);
  the_case.before = std::move(history.before);
  if (!the_case.before) return;
  const auto replaced = std::ranges::find(the_case.past, the_case.before->survey.report.issue, &amend::PastIssue::issue);
  if (replaced != the_case.past.end()) the_case.amended = amend::Amended{*replaced, changes_between(*the_case.before, the_case)};
}

std::optional<Case> opened(const base::FileInFolder &given, const Resources &resources, const Opening &opening, base::Diagnostics &sink) {
  const base::FileInFolder file{given.folder.unread(), given.name};
  const base::Folder layouts = resources.layouts.unread();
  const auto named = survey::house_named(file, sink);
  if (!named) return std::nullopt;
  auto house = house::read_house(named->value, layouts, file.folder, named->span, sink);
  if (!house) return std::nullopt;
  auto survey = survey::read_survey(file, house->policy, sink);
  if (!sink.ok()) return std::nullopt;

  Case the_case;
  the_case.house = std::move(*house);
  the_case.survey = std::move(survey);
  the_case.folder = file.folder;
  the_case.layouts = layouts;
  survey::check_survey(the_case.survey, the_case.house.policy, sink);
  admit_photographs(the_case, file.folder, opening, sink);
  the_case.assessment = assess::assess(the_case.survey, the_case.house.policy, sink);
  the_case.outlook = outlook::outlook(the_case.survey, the_case.assessment, the_case.house.policy);
  recall(the_case, opening, sink);
  review::review(the_case.survey, the_case.assessment, the_case.outlook, the_case.house.policy, sink,
                 the_case.amended ? &*the_case.amended : nullptr);
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
  std::optional<compose::Before> before;
  if (the_case.before)
    before.emplace(compose::Before{the_case.before->survey, the_case.before->assessment, the_case.before->outlook});
  const auto told = survey::without_later_addenda(the_case.survey);
  auto source = source_of(the_case, told, sink);
  source.before = before ? &*before : nullptr;
  auto blocks = compose::compose(source);
  mark_what_changed(blocks, source, the_case);
  auto pages = set_blocks(blocks, the_case, resources, sink);
  if (!pages) return std::nullopt;
  auto names = page_names(blocks, pages->pages.size());
  return Proof{.pages = std::move(*pages), .page_names = std::move(names), .figures = figures_of(blocks)};
}

std::string pdf_of(const page::Document &pages, const Case &the_case, base::Diagnostics &sink) {
  return output::pdf(pages, the_case.images, sink);
}

std::string assessment_json(const Case &the_case) {
  auto all = assess::json(the_case.survey, the_case.assessment);
  outlook::add_json(all, the_case.outlook);
  if (the_case.amended) all["amended"] = amended_json(the_case);
  if (!the_case.survey.addenda.empty())
    all["addenda"] = assess::addenda_json(the_case.survey, the_case.house.policy, the_case.assessment);
  return all.dump(2) + "\n";
}

std::string survey_schema() { return survey::schema_json(); }
std::string survey_skeleton() { return survey::skeleton_yaml(); }

} // namespace strakebook
