#pragma once

#include <string>
#include <string_view>

namespace strakebook::output {

/// Text as XML may hold it: & < > and quotes as entities; what XML 1.0 has no place for (control characters other than tab and
/// line end, U+FFFE, U+FFFF) as U+FFFD. Takes UTF-8.
std::string xml_text(std::string_view text);

/// cairo numbers surfaces and images through the whole life of the process; here each name gets the place at which it first
/// comes in the file, so that the same drawing gives the same bytes.
std::string renumbered(std::string_view svg);

/// Puts <title> and <desc> first in the root element; an empty text is left out.
std::string with_words(std::string svg, std::string_view title, std::string_view description);

} // namespace strakebook::output
