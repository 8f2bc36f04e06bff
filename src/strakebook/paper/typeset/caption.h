#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/content/inlines.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {

/// A caption with its label ("Table 11.2") in strong before it, no wider than the measure "caption-measure",
/// and `right` (in italic, may be empty) at the right edge of `width` on the first line.
/// `right` belongs to no element.
Fragment set_caption(const std::string &label, const content::Inlines &text, const style::TextStyle &style,
                     const std::string &right, base::Pt width, const Context &context);

/// Notes one under the other, no wider than the measure "note-measure"; those at the places `changed` with a change bar.
Fragment set_notes(const std::vector<content::Inlines> &notes, const std::vector<std::size_t> &changed, const style::TextStyle &style,
                   base::Pt width, const Context &context);

/// Notes with `right` (may be empty) beside their first line, as set_caption has it.
Fragment set_foot(const std::vector<content::Inlines> &notes, const std::vector<std::size_t> &changed, const style::TextStyle &style,
                  const std::string &right, base::Pt width, const Context &context);

} // namespace strakebook::typeset
