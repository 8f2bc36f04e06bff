#include <fmt/format.h>
#include <hb.h>
#include <hpdf.h>
#include <zlib.h>

#include "strakebook/paper/output/output.h"

namespace strakebook::output {

std::vector<std::string> libraries() {
  return {fmt::format("harfbuzz {}", hb_version_string()), fmt::format("libharu {}", HPDF_GetVersion()), fmt::format("zlib {}", zlibVersion())};
}

} // namespace strakebook::output
