#pragma once

#include <map>
#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/image_ref.h"
#include "strakebook/base/input_file.h"
#include "strakebook/house/house.h"
#include "strakebook/paper/content/document.h"
#include "strakebook/steel/amend/past_issue.h"
#include "strakebook/steel/assess/assessment.h"
#include "strakebook/steel/outlook/outlook.h"
#include "strakebook/steel/survey/survey.h"

/// The only translator between steel and paper: what is said, in which order, in the house's words.
namespace strakebook::compose {

/// What the issue before was made from: for the page of what changed.
struct Before {
  const survey::Survey &survey;
  const assess::Assessment &assessment;
  const outlook::Outlook &outlook;
};

struct Source {
  const survey::Survey &survey;
  const assess::Assessment &assessment;
  const outlook::Outlook &outlook;
  const house::House &house;
  const base::Diagnostics &findings;                ///< warnings and notes so far: acknowledged ones are printed
  std::map<std::string, base::PrintedPicture> photos; ///< photo id -> picture that passed the gate; others get a placeholder
  std::vector<base::InputFile> inputs;              ///< layouts, survey, readings, photographs: for the source digest
  std::string tool;                                 ///< "strakebook 0.1.0"
  std::string issued_digest = {};                   ///< of an issued copy, what each page carries: "3fa9 12c4 77b0"; empty: not issued
  std::vector<amend::PastIssue> past = {};          ///< issues of this report that went out, the first first
  const amend::Amended *amended = nullptr;          ///< null: nothing is replaced, or what is cannot be read
  const Before *before = nullptr;                   ///< there with `amended`
};

/// The report as blocks, every section of the house's plan in its order. Marks have block ids "mark/PW 9", pits "pit/P3",
/// photos "photo/4", recommendations "item/1", limitations "limitation/1", zones "zone/W".
content::Document compose(const Source &source);

} // namespace strakebook::compose
