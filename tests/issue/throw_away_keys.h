#pragma once

#include <memory>
#include <stdexcept>
#include <string>

#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/pkcs12.h>
#include <openssl/x509v3.h>

/// Keys and certificates made for one test.
namespace throw_away {

using Key = std::shared_ptr<EVP_PKEY>;
using Certificate = std::shared_ptr<X509>;

inline Key rsa() {
  static const Key made(EVP_RSA_gen(2048), EVP_PKEY_free); // the slow one
  return made;
}
inline Key ec() { return Key(EVP_EC_gen("P-256"), EVP_PKEY_free); }
inline Key ed25519() { return Key(EVP_PKEY_Q_keygen(nullptr, nullptr, "ED25519"), EVP_PKEY_free); }

struct About {
  std::string name = "A. Surveyor";
  std::string from = "20260101000000Z", to = "20271231235959Z";
  std::string usage = "digitalSignature"; ///< empty: not said
};

/// By `with` in the name of `by`; both empty: by itself.
inline Certificate certificate(const Key &of, const About &about, const Key &with = nullptr, const Certificate &by = nullptr) {
  Certificate made(X509_new(), X509_free);
  static long serial = 0;
  X509_set_version(made.get(), X509_VERSION_3);
  ASN1_INTEGER_set(X509_get_serialNumber(made.get()), ++serial);
  ASN1_TIME_set_string(X509_getm_notBefore(made.get()), about.from.c_str());
  ASN1_TIME_set_string(X509_getm_notAfter(made.get()), about.to.c_str());
  X509_set_pubkey(made.get(), of.get());
  const auto *name = reinterpret_cast<const unsigned char *>(about.name.c_str());
  X509_NAME_add_entry_by_NID(X509_get_subject_name(made.get()), NID_commonName, MBSTRING_UTF8, const_cast<unsigned char *>(name), -1, -1, 0);
  X509_set_issuer_name(made.get(), X509_get_subject_name(by ? by.get() : made.get()));
  if (!about.usage.empty()) {
    auto *usage = X509V3_EXT_conf_nid(nullptr, nullptr, NID_key_usage, about.usage.c_str());
    X509_add_ext(made.get(), usage, -1);
    X509_EXTENSION_free(usage);
  }
  const Key &signing = with ? with : of;
  if (X509_sign(made.get(), signing.get(), EVP_PKEY_get_base_id(signing.get()) == EVP_PKEY_ED25519 ? nullptr : EVP_sha256()) == 0)
    throw std::runtime_error("a certificate for a test cannot be made");
  return made;
}

template <class Write> std::string in_memory(Write write) {
  const std::unique_ptr<BIO, decltype(&BIO_free)> to(BIO_new(BIO_s_mem()), BIO_free);
  if (write(to.get()) != 1) throw std::runtime_error("a file for a test cannot be made");
  char *text = nullptr;
  const auto size = BIO_get_mem_data(to.get(), &text);
  return {text, static_cast<std::size_t>(size)};
}

inline std::string pem(const Certificate &one) {
  return in_memory([&](BIO *to) { return PEM_write_bio_X509(to, one.get()); });
}

inline std::string pem(const Key &key, const std::string &passphrase = "") {
  return in_memory([&](BIO *to) {
    return PEM_write_bio_PKCS8PrivateKey(to, key.get(), passphrase.empty() ? nullptr : EVP_aes_256_cbc(), passphrase.data(), static_cast<int>(passphrase.size()), nullptr,
                                         nullptr);
  });
}

/// Without a passphrase nothing in it is coded.
inline std::string pkcs12(const Key &key, const Certificate &one, const std::string &passphrase, const Certificate &vouching = nullptr) {
  auto *more = sk_X509_new_null();
  if (vouching) sk_X509_push(more, vouching.get());
  const int coding = passphrase.empty() ? -1 : 0;
  const std::unique_ptr<PKCS12, decltype(&PKCS12_free)> made(
      PKCS12_create(passphrase.c_str(), "test", key.get(), one.get(), more, coding, coding, 0, 0, 0), PKCS12_free);
  sk_X509_free(more);
  return in_memory([&](BIO *to) { return i2d_PKCS12_bio(to, made.get()); });
}

} // namespace throw_away
