#pragma once

namespace strakebook::output {

/// What a PDF file keeps to.
enum class PdfKind {
  report,  ///< PDF 1.7
  archival ///< the same pages in PDF 1.4 with what PDF/A-1b asks for (ISO 19005-1), as far as an outside judge can say
};

} // namespace strakebook::output
