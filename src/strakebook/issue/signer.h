#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "strakebook/base/date.h"
#include "strakebook/base/diagnostic.h"
#include "strakebook/paper/file/signature.h"

namespace strakebook::issue {

/// Files of the surveyor's own key. PKCS#12 holds both; of PEM the certificate may stand in a file of its own.
struct KeyFiles {
  std::filesystem::path key, certificate; ///< certificate empty: in the key's file
};

/// Whether a passphrase is needed to read the key. Of a file that cannot be read or is no key: no.
bool is_locked(const std::filesystem::path &key);

/// A key and its certificate, in memory for one run and wiped after it.
class Signer {
public:
  /// `passphrase`: of the key; empty: none. A file that cannot be read is added as file_unreadable; what else is wrong (no key, wrong
  /// passphrase, no certificate that is the key's, neither RSA nor ECDSA, a certificate that is not for signing) as signing_failed.
  static std::optional<Signer> load(const KeyFiles &files, std::string_view passphrase, base::Diagnostics &sink);

  /// A detached CMS signature (RFC 5652, with the signing-certificate-v2 attribute of RFC 5035, without a signing time), DER. Throws
  /// std::runtime_error where OpenSSL cannot.
  std::string sign(std::string_view covered) const;
  std::string name() const;        ///< the certificate's common name
  std::string fingerprint() const; ///< SHA-256 of the certificate, 64 hexadecimal digits
  /// Whether the certificate is valid on a day, first and last included; if not, signing_failed is added.
  bool may_sign_on(const base::Date &day, base::Diagnostics &sink) const;

private:
  struct State;
  explicit Signer(std::shared_ptr<const State> state) : state_(std::move(state)) {}
  std::shared_ptr<const State> state_;
};

/// `pdf` with the signature added last; `words` without a name say the certificate's. nullopt, with signing_failed in `sink`: the
/// certificate is not valid on the words' day, or the signature does not fit. Throws as file::prepared and Signer::sign do.
std::optional<std::string> signed_document(std::string_view pdf, file::SignatureWords words, const Signer &signer, base::Diagnostics &sink);

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
