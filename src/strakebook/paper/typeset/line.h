#pragma once

#include <string>
#include <vector>

#include "strakebook/paper/content/inlines.h"
#include "strakebook/paper/page/page.h"
#include "strakebook/paper/style/style.h"
#include "strakebook/paper/typeset/context.h"
#include "strakebook/paper/typeset/fragment.h"

namespace strakebook::typeset {

/// How a piece of text is set, beside its text style.
struct TextOptions {
  bool tabular = false;  ///< digits of one width: tables, figures, furniture
  base::Pt first_indent; ///< of the first line
};

/// One line, never broken (a LineBreak becomes a space). Size: its natural width and the leading of the
/// style; the baseline stands at `first_baseline`. Items carry context.id and belong to context.tag; what leads
/// somewhere is an element inside it, and so is a sign that says something. References are resolved and become
/// links.
Fragment set_line(const content::Inlines &text, const style::TextStyle &style, const TextOptions &options,
                  const Context &context);

/// Width that set_line would give.
base::Pt line_width(const content::Inlines &text, const style::TextStyle &style, const TextOptions &options,
                    const Context &context);

/// Lines of a paragraph, each `width` wide and a leading high, broken for the best whole paragraph; aligned
/// as the style says. A word wider than the line is broken where it must be, so that no text leaves the
/// width.
std::vector<Fragment> set_lines(const content::Inlines &text, const style::TextStyle &style, base::Pt width,
                                const TextOptions &options, const Context &context);

/// set_lines, one under the other.
Fragment set_text(const content::Inlines &text, const style::TextStyle &style, base::Pt width,
                  const TextOptions &options, const Context &context);

/// The words of inlines without form, references resolved: for the outline.
std::string plain_text(const content::Inlines &text, const Context &context);

} // namespace strakebook::typeset
