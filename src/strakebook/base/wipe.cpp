#include "strakebook/base/wipe.h"

#include <openssl/crypto.h>

namespace strakebook::base {

void wipe(std::string &secret) {
  secret.resize(secret.capacity()); // what an earlier, longer text left behind it, too
  OPENSSL_cleanse(secret.data(), secret.size());
  secret.clear();
}

} // namespace strakebook::base
