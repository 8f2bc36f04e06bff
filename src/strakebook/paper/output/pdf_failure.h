#pragma once

#include <stdexcept>

namespace strakebook::output {

/// The PDF cannot be written; what() says which step failed.
struct PdfFailure : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// The document has more pages or bytes than a PDF file of this kind can hold.
struct PdfTooLarge : std::runtime_error {
  using std::runtime_error::runtime_error;
};

} // namespace strakebook::output
