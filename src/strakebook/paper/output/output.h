#pragma once

#include <string>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/paper/media/media.h"
#include "strakebook/paper/output/pdf_kind.h"
#include "strakebook/paper/output/view.h"
#include "strakebook/paper/page/page.h"

namespace strakebook::output {

/// The document as the bytes of a PDF 1.7 file, written by libharu's object layer: own Type0 fonts with subsets and
/// ToUnicode, own content streams, links, named destinations, outline, metadata, and the structure tree that the items' tags
/// make. Same document, same bytes. On failure adds
/// output_failed or output_too_large and returns an empty string. Pages that are not sound (a coordinate that is not finite
/// or not on the page, and the like: sound.h), a document without pages, a link or bookmark that leads nowhere, an outline
/// that skips a level, a picture that is not in the store, or files to be attached to an archival PDF throw std::logic_error. Where an anchor's id comes twice, the
/// first in reading order counts.
std::string pdf(const page::Document &document, const media::ImageStore &images, base::Diagnostics &sink,
                PdfKind kind = PdfKind::report);

/// One page as a PNG file's bytes, drawn by cairo at `dpi` (above 0) from the same page data. Throws std::logic_error as
/// pdf() does, and std::runtime_error when cairo cannot draw it (no memory, a font that cannot be opened).
std::string png(const page::Document &document, std::size_t page_index, const media::ImageStore &images, double dpi);
std::string png(const page::Document &document, const View &view, const media::ImageStore &images, double dpi);

/// The libraries that the bytes of a PDF depend on, with their versions: "harfbuzz 6.0.0".
std::vector<std::string> libraries();

/// What a picture says to a reader who cannot see it. Plain text.
struct PictureWords {
  std::string title, description;
};

/// The same as an SVG 1.1 file, in points; text is outlines, so that it needs no font, and the words stand in <title> and
/// <desc>. Same pages, same bytes. Throws as png() does.
std::string svg(const page::Document &document, const View &view, const media::ImageStore &images,
                const PictureWords &words);

} // namespace strakebook::output
