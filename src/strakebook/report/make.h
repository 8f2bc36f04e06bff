#pragma once

#include <functional>

#include "strakebook/report/kept.h"

namespace strakebook {

/// The pages of a document about a case; nullopt: what is wrong is in the sink.
using Pages = std::function<std::optional<page::Document>(const Case &, base::Diagnostics &)>;

/// What make_report() and make_addendum() have in common. `addendum` 0: the report itself.
std::optional<MadeReport> make_document(const base::FileSet &files, int addendum, const Pages &pages_of, base::Diagnostics &sink);

} // namespace strakebook
