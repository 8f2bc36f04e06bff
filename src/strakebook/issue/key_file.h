#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/issue/openssl.h"
#include "strakebook/issue/signer.h"

namespace strakebook::issue {

/// A private key, the certificate that is its own, and those that vouch for that one, without a root that vouches for itself and in
/// the order of their DER, which is that of a set.
struct KeyRing {
  Key key;
  Certificate certificate;
  std::vector<Certificate> others;
};

/// As Signer::load says.
std::optional<KeyRing> read_key_ring(const KeyFiles &files, std::string_view passphrase, base::Diagnostics &sink);

/// Adds signing_failed.
void refuse(base::Diagnostics &sink, std::string what, std::string expected, std::string write);

} // namespace strakebook::issue
