#include "strakebook/paper/output/deflate.h"

#include <zlib.h>

#include "strakebook/paper/output/pdf_failure.h"

namespace strakebook::output {

std::string deflated(std::string_view data) {
  auto size = compressBound(data.size());
  std::string packed(size, '\0');
  const auto status = compress(reinterpret_cast<Bytef *>(packed.data()), &size,
                               reinterpret_cast<const Bytef *>(data.data()), data.size());
  if (status != Z_OK)
    throw PdfFailure("compressing a stream");
  packed.resize(size);
  return packed;
}

} // namespace strakebook::output
