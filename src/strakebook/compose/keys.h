#pragma once

#include "strakebook/compose/voice.h"

/// Key-value lists, kept short in the chapters.
namespace strakebook::compose {

using Entries = std::vector<content::KeyValues::Entry>;

/// One line; `label` is already in the house's words.
void add(Entries &entries, std::string label, Inlines value);
/// What the surveyor wrote; where nothing was written, that it is not given.
void add_answer(const Scope &scope, Entries &entries, std::string label, const survey::Words &words);
/// The same, left out where nothing was written.
void add_if_given(const Scope &scope, Entries &entries, std::string label, const survey::Words &words);
void add_date(const Scope &scope, Entries &entries, std::string label,
              const survey::Given<base::Date> &given);
/// A stated length with where it comes from.
void add_length(const Scope &scope, Entries &entries, std::string label, const survey::LengthFact &fact);

content::Block keys(Entries entries, std::string style, int columns = 1);
std::string yes_no(const Scope &scope, bool value);

} // namespace strakebook::compose
