#include "strakebook/paper/output/pdf_marks.h"

#include <fmt/format.h>
#include <stdexcept>
#include <string_view>

#include "strakebook/paper/output/pdf_structure.h"

namespace strakebook::output {

namespace {

/// Every operator stands at the end of a line.
std::size_t lines_ending(std::string_view operators, std::string_view with) {
  std::size_t found = 0;
  for (auto at = operators.find(with); at != operators.npos; at = operators.find(with, at + with.size()))
    ++found;
  return found;
}

} // namespace

/// The element; the two kinds of artifact are none.
int PdfMarks::place_of(const page::TagPath &tag) {
  constexpr int decoration = -1, furniture = -2;
  if (!tag)
    return decoration;
  return page::is_furniture(tag) ? furniture : tree_.element_of(tag);
}

void PdfMarks::change(const page::TagPath &tag, std::string &operators) {
  if (open_)
    operators += "EMC\n";
  if (!tag)
    operators += "/Artifact <</Type /Layout>> BDC\n";
  else if (page::is_furniture(tag))
    operators += "/Artifact <</Type /Pagination>> BDC\n";
  else
    operators += fmt::format("/{} <</MCID {}>> BDC\n", structure_type(*tag),
                             tree_.add_marked(tree_.element_of(tag), page_));
  last_ = tag;
  open_ = true;
}

void PdfMarks::end(std::string &operators) {
  if (open_)
    operators += "EMC\n";
  open_ = false;
  if (lines_ending(operators, " BDC\n") != lines_ending(operators, "EMC\n"))
    throw std::logic_error("marked content of a page that does not begin and end in pairs");
}

} // namespace strakebook::output
