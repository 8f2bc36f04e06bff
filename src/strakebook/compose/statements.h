#pragma once

#include "strakebook/compose/voice.h"

/// Statements of the decision pages: words in the text column, what they rest on in the side column.
namespace strakebook::compose {

/// What a statement rests on. `computed` is the tool's own arithmetic; such a statement contains no action.
enum class Rests { measured, seen, told, inferred, computed, opinion };

Rests rests_on(survey::StatementKind kind);
std::string statement_meaning(Rests rests); ///< name of its line or ring: "measured"
std::string statement_word(const Scope &scope, Rests rests);

/// The type with its sign, then the evidence in soft under it.
content::Block type_and_evidence(const Scope &scope, Rests rests, Inlines evidence);
/// Two columns: blocks at the left, blocks of the side column at the right.
content::Block beside(std::vector<content::Block> left, std::vector<content::Block> right);
/// What the surveyor says. For `computed` there is computed().
content::Block statement(const Scope &scope, Rests rests, std::vector<content::Block> left, Inlines evidence);
/// What the program worked out, with the rule it did so by: "least of repeats", then where to read on.
content::Block computed(const Scope &scope, const Sentence &sentence, std::string rule, Inlines where = {});

/// "PW 9 (Table 11.2, p. 9), photo 4 (p. 31)" for ids that a decision or item names as evidence.
Inlines evidence_list(const Scope &scope, const std::vector<std::string> &evidence);

} // namespace strakebook::compose
