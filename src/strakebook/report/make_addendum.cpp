#include <charconv>

#include "strakebook/report/letters.h"
#include "strakebook/report/make.h"

namespace strakebook {

std::optional<MadeReport> make_addendum(const base::FileSet &files, const std::string &addendum, const Resources &resources,
                                        base::Diagnostics &sink) {
  int number = 0;
  std::from_chars(addendum.data(), addendum.data() + addendum.size(), number);
  const auto pages_of = [&](const Case &the_case, base::Diagnostics &found) { return addendum_pages(the_case, addendum, resources, found); };
  return make_document(files, number, pages_of, sink);
}

} // namespace strakebook
