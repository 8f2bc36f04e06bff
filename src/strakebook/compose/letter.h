#pragma once

#include "strakebook/compose/voice.h"

/// Short documents about a report, which go out beside it: what all of them have.
namespace strakebook::compose {

/// What a letter is called and says at its head and foot.
struct LetterWords {
  std::string title;      ///< of the file
  Inlines head_right;
  std::string foot_left;
  Inlines end;            ///< closes the last page
  std::string date;       ///< its own, "2026-11-09"; may be empty
};

/// One section in the house's style, with head, foot and end mark. Nothing in it leads anywhere: what is a link in the report is
/// plain words here, and page numbers of the report are left out.
content::Document letter(const Scope &scope, std::vector<content::Block> blocks, LetterWords words);

/// The issue in the list of those that went out; nullptr: it is not there.
const amend::PastIssue *past_issue(const Scope &scope, int issue);
/// "21 October 2026", or that no date is known.
Inlines date_of_issue(const Scope &scope, const amend::PastIssue &issue);
/// The digests of an issued copy, "3fa9 12c4 77b0", or that it is not issued.
std::string copy_words(const Scope &scope);
/// The title of a letter, small, over the vessel's name.
std::vector<content::Block> letter_title(const Scope &scope, std::string title);
/// A paper digest: every digit, in groups of four.
Inlines whole_digest(const Scope &scope, const std::string &digest);

} // namespace strakebook::compose
