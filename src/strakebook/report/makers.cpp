#include <algorithm>

#include <boost/version.hpp>
#include <fmt/format.h>
#include <gnu/libc-version.h>

#include "strakebook/paper/output/output.h"
#include "strakebook/report/kept.h"
#include "strakebook/source_digest.h"

namespace strakebook {

namespace {

/// Figures are printed from floating point, so the compiler and the machine count as the libraries do.
std::vector<std::string> built_with() {
  constexpr int hundred = 100, thousand = 1000;
  return {fmt::format("boost {}.{}.{}", BOOST_VERSION / (hundred * thousand), BOOST_VERSION / hundred % thousand, BOOST_VERSION % hundred),
          fmt::format("compiler {} for " STRAKEBOOK_PROCESSOR, __VERSION__), fmt::format("glibc {}", gnu_get_libc_version()),
          "yaml-cpp " STRAKEBOOK_YAML_CPP};
}

} // namespace

issue::Makers makers() {
  issue::Makers makers{tool_name() + " of sources " + std::string(source_digest), built_with()};
  for (const auto &more : {output::libraries(), media::libraries()}) makers.libraries.insert(makers.libraries.end(), more.begin(), more.end());
  std::sort(makers.libraries.begin(), makers.libraries.end());
  makers.libraries.erase(std::unique(makers.libraries.begin(), makers.libraries.end()), makers.libraries.end());
  return makers;
}

} // namespace strakebook
