#pragma once

#include <map>
#include <string>

#include "strakebook/paper/media/media.h"
#include "strakebook/paper/output/pdf_objects.h"

namespace strakebook::output {

/// The pictures of a file, each written once, when it is first asked for.
class PdfImages {
public:
  PdfImages(PdfFile &file, const media::ImageStore &images) : file_(file), images_(images) {}

  /// Throws std::logic_error for a digest that is not in the store or a picture without size or data.
  PdfDict object(const std::string &digest);

private:
  PdfFile &file_;
  const media::ImageStore &images_;
  std::map<std::string, PdfDict> written_;
};

} // namespace strakebook::output
