# Writes a header with the digest of what the program is made from: -DROOT, -DFILES (paths from there, sorted), -DHEADER.
set(list "")
foreach(file IN LISTS FILES)
  file(SHA256 "${ROOT}/${file}" digest)
  string(APPEND list "${digest} ${file}\n")
endforeach()
string(SHA256 digest "${list}")
file(WRITE "${HEADER}" "#pragma once\n\n#include <string_view>\n\nnamespace strakebook {\n\n/// SHA-256 over the program's sources, its fonts' digests and how it is built.\ninline constexpr std::string_view source_digest = \"${digest}\";\n\n} // namespace strakebook\n")
