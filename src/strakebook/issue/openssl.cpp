#include "strakebook/issue/openssl.h"

#include <openssl/err.h>
#include <openssl/ess.h>
#include <openssl/pem.h>

#include "strakebook/base/digest.h"

namespace strakebook::issue {

namespace {

using Binding = std::unique_ptr<ESS_SIGNING_CERT_V2, Freed<ESS_SIGNING_CERT_V2_free>>;

std::string whole_name(const X509_NAME *name) {
  const Bio to(BIO_new(BIO_s_mem()));
  X509_NAME_print_ex(to.get(), name, 0, XN_FLAG_RFC2253 & ~ASN1_STRFLGS_ESC_MSB);
  char *text = nullptr;
  const auto size = BIO_get_mem_data(to.get(), &text);
  return {text, static_cast<std::size_t>(size)};
}

} // namespace

std::string name_of(const X509 *certificate) {
  const auto *const name = X509_get_subject_name(certificate);
  const int at = X509_NAME_get_index_by_NID(name, NID_commonName, -1);
  if (at < 0) return whole_name(name);
  unsigned char *utf8 = nullptr;
  const int size = ASN1_STRING_to_UTF8(&utf8, X509_NAME_ENTRY_get_data(X509_NAME_get_entry(name, at)));
  if (size < 0) return whole_name(name);
  std::string out(reinterpret_cast<const char *>(utf8), static_cast<std::size_t>(size));
  OPENSSL_free(utf8);
  return out;
}

std::string fingerprint_of(const X509 *certificate) { return base::sha256_hex(der_of(i2d_X509, certificate)); }

std::vector<Certificate> certificates_in(std::string_view file) {
  std::vector<Certificate> found;
  const auto from = reading(file);
  while (auto *one = PEM_read_bio_X509(from.get(), nullptr, nullptr, nullptr)) found.emplace_back(one);
  const auto *at = reinterpret_cast<const unsigned char *>(file.data());
  if (found.empty())
    if (auto *one = d2i_X509(nullptr, &at, static_cast<long>(file.size()))) found.emplace_back(one);
  ERR_clear_error();
  return found;
}

std::string bound_to(X509 *signer, const std::vector<X509 *> &others) {
  Listed listed;
  for (auto *one : others) listed.add(one);
  const Binding binding(OSSL_ESS_signing_cert_v2_new_init(EVP_sha256(), signer, listed.get(), 1));
  return binding ? der_of(i2d_ESS_SIGNING_CERT_V2, binding.get()) : std::string();
}

} // namespace strakebook::issue
