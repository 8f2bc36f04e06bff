#include "strakebook/base/digest.h"

#include <array>
#include <stdexcept>

#include <openssl/evp.h>

namespace strakebook::base {

std::string sha256_hex(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> hash{};
  unsigned int size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), hash.data(), &size, EVP_sha256(), nullptr) != 1)
    throw std::runtime_error("SHA-256 is not available");
  constexpr std::string_view hex = "0123456789abcdef";
  std::string text;
  for (unsigned int i = 0; i < size; ++i) {
    text += hex[hash[i] >> 4];
    text += hex[hash[i] & 15];
  }
  return text;
}

} // namespace strakebook::base
