#pragma once

#include <string>
#include <vector>

class QPDF;

namespace strakebook::file {

/// The text of each page as UTF-8, in the order of its content and without blanks, by the ToUnicode maps of its fonts (ISO 32000-1,
/// 9.10.3). A page whose content cannot be read has none. Throws what libqpdf throws where there are no pages.
std::vector<std::string> page_texts(QPDF &file);

} // namespace strakebook::file
