#include "strakebook/compose/letter.h"

#include <algorithm>

#include "strakebook/compose/furniture.h"
#include "strakebook/compose/looks.h"
#include "strakebook/compose/photo_words.h"
#include "strakebook/compose/unlinked.h"

namespace strakebook::compose {

using content::plain;

content::Document letter(const Scope &scope, std::vector<content::Block> blocks, LetterWords words) {
  content::Document out;
  blocks.push_back(block(content::EndMark{std::move(words.end)}));
  out.sections.push_back({.id = {}, .blocks = std::move(blocks)});
  out.furniture.head_left = scope.tell("letter.head-left", {{"vessel", content::italic(scope.survey().vessel.name.text)}});
  out.furniture.head_right = std::move(words.head_right);
  out.furniture.foot_left = plain(std::move(words.foot_left));
  out.furniture.foot_right = house::word(scope.wording(), "labels.foot");
  out.labels = labels(scope);
  out.title = std::move(words.title);
  out.author = scope.survey().surveyor.name.text;
  out.subject = scope.say("document.subject");
  out.language = scope.wording().language;
  out.date = std::move(words.date);
  out.creator = scope.source.tool;
  unlink(out);
  return out;
}

const amend::PastIssue *past_issue(const Scope &scope, int issue) {
  const auto &past = scope.source.past;
  const auto found = std::ranges::find(past, issue, &amend::PastIssue::issue);
  return found == past.end() ? nullptr : &*found;
}

Inlines date_of_issue(const Scope &scope, const amend::PastIssue &issue) {
  return issue.date ? plain(date(scope, *issue.date)) : content::italic(scope.say("letter.no-date"));
}

std::string copy_words(const Scope &scope) {
  const auto &digest = scope.source.issued_digest;
  return digest.empty() ? scope.say("letter.not-issued") : scope.say("letter.inputs", {{"digest", digest}});
}

std::vector<content::Block> letter_title(const Scope &scope, std::string title) {
  content::Heading head{.level = 1, .number = {}, .text = plain(std::move(title)), .in_contents = false, .text_style = look::title_eyebrow};
  return {block(std::move(head)), paragraph(plain(scope.survey().vessel.name.text), look::vessel_name)};
}

Inlines whole_digest(const Scope &scope, const std::string &digest) {
  return digest.empty() ? content::italic(scope.say("letter.not-registered")) : plain(in_fours(digest));
}

} // namespace strakebook::compose
