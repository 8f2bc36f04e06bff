#include "strakebook/paper/output/pdf_image.h"

#include "strakebook/paper/output/image_of.h"

namespace strakebook::output {

PdfDict PdfImages::object(const std::string &digest) {
  if (const auto known = written_.find(digest); known != written_.end())
    return known->second;
  const auto &image = image_of(images_, digest);
  const bool grey = image.components == 1;
  auto object = file_.stream(image.data, image.coding == media::Image::Coding::jpeg ? Coding::jpeg : Coding::deflated);
  object.name("Type", "XObject")
      .name("Subtype", "Image")
      .number("Width", image.ref.width)
      .number("Height", image.ref.height)
      .name("ColorSpace", grey ? "DeviceGray" : "DeviceRGB")
      .number("BitsPerComponent", 8);
  written_.emplace(digest, object);
  return object;
}

} // namespace strakebook::output
