#include "strakebook/report/letters.h"

#include <stdexcept>

#include "strakebook/compose/addendum.h"
#include "strakebook/compose/notice.h"
#include "strakebook/compose/stamp.h"
#include "strakebook/report/composing.h"
#include "strakebook/steel/survey/closing.h"

namespace strakebook {

namespace {

std::optional<std::string> as_pdf(const std::optional<page::Document> &pages, const Case &the_case, base::Diagnostics &sink) {
  if (!pages) return std::nullopt;
  std::string bytes = pdf_of(*pages, the_case, sink);
  if (bytes.empty()) return std::nullopt;
  return bytes;
}

/// A letter about what replaces nothing is a fault of the program.
void needs_amended(const Case &the_case) {
  if (!the_case.amended) throw std::logic_error("no issue is replaced, and a letter says that one is");
}

} // namespace

std::optional<std::string> recall_notice(const Case &the_case, const survey::Recipient &recipient, const Resources &resources, base::Diagnostics &sink) {
  needs_amended(the_case);
  const auto source = source_of(the_case, the_case.survey, sink);
  std::optional<page::Document> pages;
  // One page is read and filed; the pages of what changed hold the rest.
  for (const auto detail : {compose::NoticeDetail::every_change, compose::NoticeDetail::decisions_and_readings, compose::NoticeDetail::decisions,
                            compose::NoticeDetail::counts}) {
    pages = set_blocks(compose::notice(source, recipient, detail), the_case, resources, sink);
    if (!pages || pages->pages.size() == 1) break;
  }
  return as_pdf(pages, the_case, sink);
}

std::optional<std::string> superseded_stamp(const Case &the_case, const Resources &resources, base::Diagnostics &sink) {
  needs_amended(the_case);
  return as_pdf(set_blocks(compose::stamp(source_of(the_case, the_case.survey, sink)), the_case, resources, sink), the_case, sink);
}

std::optional<page::Document> addendum_pages(const Case &the_case, const std::string &addendum, const Resources &resources, base::Diagnostics &sink) {
  const auto *found = survey::addendum_of(the_case.survey, addendum);
  if (found == nullptr) {
    sink.error(base::Code::dangling_reference, the_case.survey.span, "the survey has no addendum " + addendum,
               "the number of one that stands under addenda");
    return std::nullopt;
  }
  return set_blocks(compose::addendum(source_of(the_case, the_case.survey, sink), *found), the_case, resources, sink);
}

} // namespace strakebook
