#pragma once

#include "strakebook/compose/voice.h"

/// How the report speaks of its own issue, and of the one that it replaces.
namespace strakebook::compose {

/// Whether this copy is an issued one: every page then carries the short digest of its inputs.
bool issued(const Scope &scope);
/// The first twelve figures of a SHA-256, in fours: "3fa9 12c4 77b0".
std::string short_digest(std::string_view sha256);
/// "issue 1 of 21 October 2026 (SHA-256 3fa9 12c4 77b0 …)".
std::string past_issue_words(const Scope &scope, const amend::PastIssue &past);
/// "the buyer, by letter".
Inlines recipient_words(const Scope &scope, const survey::Recipient &recipient);
/// For page one: which issue this one replaces, and whether a decision changed; nullopt where nothing is replaced.
std::optional<content::Block> replaces_notice(const Scope &scope);
/// What closes the last page.
Inlines end_words(const Scope &scope);

} // namespace strakebook::compose
