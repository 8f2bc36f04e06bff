#pragma once

#include <string>
#include <vector>

#include "strakebook/compose/compose.h"
#include "strakebook/compose/voice.h"

/// A real survey against the shipped base layout, and blocks read back as text.
namespace strakebook::sample {

/// Everything that compose is given; change it before composing.
struct Composed {
  house::House house;
  survey::Survey survey;
  assess::Assessment assessment;
  outlook::Outlook outlook;
  base::Diagnostics findings;

  compose::Source source() const {
    return {.survey = survey,
            .assessment = assessment,
            .outlook = outlook,
            .house = house,
            .findings = findings,
            .photos = {},
            .inputs = survey.inputs,
            .tool = "strakebook test"};
  }
};

/// Everything computed from the survey, once more: after a test has changed it.
void assess_again(Composed &sample);

/// tests/compose/data/survey.yaml, read and assessed.
Composed small_survey();

/// Words of blocks, in order, one line a paragraph, cell or entry. References give their words or "->target",
/// signs "[meaning]".
std::string text_of(const std::vector<content::Block> &blocks);
std::string text_of(const content::Inlines &inlines);
std::string section_text(const content::Document &document, const std::string &section);
bool contains(const std::string &text, const std::string &part);

/// Every reference target and every id of the document.
struct Links {
  std::vector<content::Reference> references;
  std::vector<std::string> ids;
};
Links links_of(const content::Document &document);

} // namespace strakebook::sample
