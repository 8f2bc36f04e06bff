#pragma once

#include <memory>
#include <string>
#include <vector>

#include "strakebook/base/folder.h"
#include "strakebook/steel/amend/amend.h"
#include "strakebook/steel/survey/reader.h"
#include "support/house_sample.h"

/// Surveys read, assessed and compared.
namespace strakebook::amend::testing {

inline const policy::Policy &house() {
  static const auto made = [] {
    auto policy = sample::house();
    policy.bases["builder's drawing"] = {"builder's drawing", false};
    for (const char *metal : {"magnesium", "zinc"}) policy.protection.metals[metal] = {.capacity = {1100, 0}, .waters = {"fresh"}, .source = "made up"};
    policy.afloat.waters["salt"] = {1025, 3};
    return policy;
  }();
  return made;
}

/// One state of a survey with everything that a comparison is given.
class State {
public:
  explicit State(survey::Survey given, std::vector<base::InputFile> files = {}, base::Diagnostics read = {})
      : survey(std::move(given)), inputs(std::move(files)), found(std::move(read)), assessment(assess::assess(survey, house(), found)) {}
  Edition edition() const {
    static const outlook::Outlook nothing;
    return {survey, assessment, nothing, house(), inputs};
  }

  survey::Survey survey;
  std::vector<base::InputFile> inputs;
  base::Diagnostics found;
  assess::Assessment assessment;
};

inline Changes compared(const State &before, const State &after) { return compare(before.edition(), after.edition()); }

/// "survey.yaml" and what it names; nullptr: it cannot be read.
inline std::unique_ptr<const State> read(const base::FileSet &files, base::Diagnostics &found) {
  auto survey = survey::read_survey({base::Folder::kept(files), "survey.yaml"}, house(), found);
  return found.ok() ? std::make_unique<const State>(std::move(survey)) : nullptr;
}
inline std::unique_ptr<const State> read(const base::FileSet &files) {
  base::Diagnostics found;
  return read(files, found);
}

inline std::vector<std::string> subjects(const Changes &changes) {
  std::vector<std::string> all;
  for (const auto &change : changes.all) all.push_back(change.subject);
  return all;
}

} // namespace strakebook::amend::testing
