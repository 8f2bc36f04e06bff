#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "strakebook/base/diagnostic.h"

namespace strakebook::issue {

/// Files of the surveyor's own key. PKCS#12 holds both; of PEM the certificate may stand in a file of its own.
struct KeyFiles {
  std::filesystem::path key, certificate; ///< certificate empty: in the key's file
};

/// A key and its certificate, in memory for one run and wiped after it.
class Signer {
public:
  /// `passphrase`: of the key; empty: none. What is wrong (no such file, wrong passphrase, a key that is not the certificate's, a
  /// certificate that is not valid on the day the survey is signed) is added as signing_failed and nullopt returned.
  static std::optional<Signer> load(const KeyFiles &files, std::string_view passphrase, base::Diagnostics &sink);

  /// A detached CMS signature (RFC 5652, with the signing-certificate-v2 attribute of RFC 5035, without a signing time), DER.
  std::string sign(std::string_view covered) const;
  std::string name() const;        ///< the certificate's common name
  std::string fingerprint() const; ///< SHA-256 of the certificate, 64 hexadecimal digits

private:
  struct State;
  explicit Signer(std::shared_ptr<const State> state) : state_(std::move(state)) {}
  std::shared_ptr<const State> state_;
};

/// What a signature says when it is checked against the bytes it covers.
struct SignatureFound {
  bool holds = false;
  std::string why;         ///< of one that does not hold
  std::string name;        ///< of the certificate that it carries
  std::string fingerprint; ///< of that certificate
};
/// The identity behind the certificate is not checked: whoever made the key chose the name. `known_certificate` (PEM), if not empty, is
/// the certificate that it has to be, or that has to have issued it.
SignatureFound check_signature(std::string_view der, std::string_view covered, std::string_view known_certificate = {});

} // namespace strakebook::issue
