#include "strakebook/issue/key_file.h"

#include <algorithm>
#include <cstring>

#include <fmt/format.h>
#include <openssl/err.h>
#include <openssl/pem.h>
#include <openssl/pkcs12.h>
#include <openssl/x509v3.h>

#include "strakebook/base/files.h"
#include "strakebook/base/wipe.h"

namespace strakebook::issue {

namespace {

constexpr std::size_t most_key_bytes = 1 << 20; // a key and its certificates are a few thousand
constexpr const char *forms = "a key in PEM, or key and certificate in PKCS#12 (.p12, .pfx)";

using Pkcs12 = std::unique_ptr<PKCS12, Freed<PKCS12_free>>;

bool is_pem(std::string_view bytes) { return bytes.find("-----BEGIN ") != bytes.npos; }

/// PKCS#8 and the older form of PEM both say it in words.
bool is_locked_pem(std::string_view bytes) { return bytes.find("ENCRYPTED") != bytes.npos; }

Pkcs12 pkcs12_of(std::string_view bytes) {
  const auto *at = reinterpret_cast<const unsigned char *>(bytes.data());
  Pkcs12 read(d2i_PKCS12(nullptr, &at, static_cast<long>(bytes.size())));
  ERR_clear_error();
  return read;
}

bool opens(PKCS12 *file, const std::string &passphrase) {
  const bool with_none = passphrase.empty() && PKCS12_verify_mac(file, nullptr, 0) == 1;
  const bool opened = with_none || PKCS12_verify_mac(file, passphrase.c_str(), static_cast<int>(passphrase.size())) == 1;
  ERR_clear_error();
  return opened || PKCS12_mac_present(file) == 0;
}

int give_passphrase(char *to, int room, int, void *given) {
  const auto &passphrase = *static_cast<const std::string *>(given);
  if (passphrase.empty() || passphrase.size() > static_cast<std::size_t>(room)) return -1;
  std::memcpy(to, passphrase.data(), passphrase.size());
  return static_cast<int>(passphrase.size());
}

void refuse_passphrase(const std::string &name, bool none, base::Diagnostics &sink) {
  if (none) refuse(sink, fmt::format("{} is locked, and no passphrase was given", name), "the passphrase of the key", "--passphrase-file FILE, or run it at a terminal that can ask");
  else refuse(sink, fmt::format("the passphrase is not that of {}", name), "the passphrase that the key was locked with", "try again; the file's first line is the passphrase, to its last blank");
}

Key key_of_pem(std::string_view bytes, std::string &passphrase, const std::string &name, base::Diagnostics &sink) {
  const auto from = reading(bytes);
  Key key(PEM_read_bio_PrivateKey(from.get(), nullptr, give_passphrase, &passphrase));
  ERR_clear_error();
  if (key) return key;
  if (is_locked_pem(bytes)) refuse_passphrase(name, passphrase.empty(), sink);
  else refuse(sink, fmt::format("{} has no private key that can be read", name), forms, "the file that was made together with the certificate");
  return key;
}

/// Everything in a PKCS#12 file; the certificates in no order.
bool take_pkcs12(PKCS12 *file, const std::string &passphrase, const std::string &name, KeyRing &to, base::Diagnostics &sink) {
  if (!opens(file, passphrase)) {
    refuse_passphrase(name, passphrase.empty(), sink);
    return false;
  }
  EVP_PKEY *key = nullptr;
  X509 *certificate = nullptr;
  STACK_OF(X509) *more = nullptr;
  const bool parsed = PKCS12_parse(file, passphrase.c_str(), &key, &certificate, &more) == 1;
  ERR_clear_error();
  to.key.reset(key);
  if (certificate) to.others.emplace_back(certificate);
  while (more && sk_X509_num(more) > 0) to.others.emplace_back(sk_X509_shift(more));
  sk_X509_free(more);
  if (parsed && to.key) return true;
  refuse(sink, fmt::format("{} opens, but its key cannot be read", name), "PKCS#12 with a private key, coded as is usual today (AES)",
         "export it again with today's coding; RC2, which old programs used, is no longer read");
  return false;
}

bool read_key(const KeyFiles &files, std::string &passphrase, KeyRing &to, base::Diagnostics &sink) {
  auto bytes = base::read_file(files.key, most_key_bytes, {}, sink);
  if (!bytes) return false;
  const base::WipedAtEnd wiped(*bytes);
  const auto name = files.key.string();
  if (is_pem(*bytes)) {
    to.key = key_of_pem(*bytes, passphrase, name, sink);
    to.others = certificates_in(*bytes);
    return to.key != nullptr;
  }
  const auto file = pkcs12_of(*bytes);
  if (file) return take_pkcs12(file.get(), passphrase, name, to, sink);
  refuse(sink, fmt::format("{} is no key", name), forms, "the file that was made together with the certificate");
  return false;
}

/// The certificates of a file of their own, which then count alone.
bool read_certificates(const std::filesystem::path &file, KeyRing &to, base::Diagnostics &sink) {
  if (file.empty()) return true;
  const auto bytes = base::read_file(file, most_key_bytes, {}, sink);
  if (!bytes) return false;
  to.others = certificates_in(*bytes);
  if (to.others.empty()) refuse(sink, fmt::format("{} is no certificate", file.string()), "a certificate in PEM", "the file that was made together with the key");
  return !to.others.empty();
}

/// Which of the certificates is the key's: put into its place, and roots left out.
bool pick_own(const std::string &name, KeyRing &ring, base::Diagnostics &sink) {
  const auto own = std::ranges::find_if(ring.others, [&](const auto &one) { return X509_check_private_key(one.get(), ring.key.get()) == 1; });
  ERR_clear_error();
  if (own == ring.others.end()) {
    refuse(sink, fmt::format("{} the key in {}", ring.others.empty() ? "no certificate is given for" : "none of the certificates that are given is that of", name), "the certificate of this very key",
           "--certificate FILE");
    return false;
  }
  ring.certificate = std::move(*own);
  ring.others.erase(own);
  std::erase_if(ring.others, [](const auto &one) { return X509_check_issued(one.get(), one.get()) == X509_V_OK; });
  std::ranges::sort(ring.others, {}, [](const auto &one) { return der_of(i2d_X509, one.get()); });
  return true;
}

bool fit_to_sign(const std::string &name, const KeyRing &ring, base::Diagnostics &sink) {
  const int kind = EVP_PKEY_get_base_id(ring.key.get());
  if (kind != EVP_PKEY_RSA && kind != EVP_PKEY_EC) {
    refuse(sink, fmt::format("{} is a key of a kind that readers of PDF do not check", name), "RSA, or an elliptic curve (ECDSA)", "a key of one of these kinds");
    return false;
  }
  if ((X509_get_key_usage(ring.certificate.get()) & (KU_DIGITAL_SIGNATURE | KU_NON_REPUDIATION)) == 0) {
    refuse(sink, fmt::format("the certificate of {} is not for signing", name), "a certificate whose key usage is digital signature or non-repudiation", "a certificate for signing");
    return false;
  }
  return true;
}

} // namespace

void refuse(base::Diagnostics &sink, std::string what, std::string expected, std::string write) {
  sink.error(base::Code::signing_failed, {}, std::move(what), std::move(expected), std::move(write));
}

std::optional<KeyRing> read_key_ring(const KeyFiles &files, std::string_view passphrase, base::Diagnostics &sink) {
  std::string secret(passphrase);
  const base::WipedAtEnd wiped(secret);
  KeyRing ring;
  const auto name = files.key.string();
  if (!read_key(files, secret, ring, sink) || !read_certificates(files.certificate, ring, sink)) return std::nullopt;
  if (!pick_own(name, ring, sink) || !fit_to_sign(name, ring, sink)) return std::nullopt;
  return ring;
}

bool is_locked(const std::filesystem::path &key) {
  base::Diagnostics unheard; // load() says what is wrong with the file
  auto bytes = base::read_file(key, most_key_bytes, {}, unheard);
  if (!bytes) return false;
  const base::WipedAtEnd wiped(*bytes);
  if (is_pem(*bytes)) return is_locked_pem(*bytes);
  const auto file = pkcs12_of(*bytes);
  return file && !opens(file.get(), "");
}

} // namespace strakebook::issue
