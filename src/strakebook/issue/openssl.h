#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include <openssl/bio.h>
#include <openssl/cms.h>
#include <openssl/evp.h>
#include <openssl/x509.h>

/// Owners of OpenSSL's values. A private key is wiped by OpenSSL when its last owner ends.
namespace strakebook::issue {

template <auto free> struct Freed {
  template <class T> void operator()(T *value) const { free(value); }
};
using Key = std::unique_ptr<EVP_PKEY, Freed<EVP_PKEY_free>>;
using Certificate = std::unique_ptr<X509, Freed<X509_free>>;
using Bio = std::unique_ptr<BIO, Freed<BIO_free>>;
using Cms = std::unique_ptr<CMS_ContentInfo, Freed<CMS_ContentInfo_free>>;

/// To read these bytes from; they are not copied.
inline Bio reading(std::string_view bytes) { return Bio(BIO_new_mem_buf(bytes.data(), static_cast<int>(bytes.size()))); }

/// Certificates as OpenSSL takes them; they still belong to their owners.
class Listed {
public:
  Listed() : list_(sk_X509_new_null()) {}
  explicit Listed(const std::vector<Certificate> &certificates) : Listed() {
    for (const auto &one : certificates) add(one.get());
  }
  Listed(const Listed &) = delete;
  Listed &operator=(const Listed &) = delete;
  ~Listed() { sk_X509_free(list_); }
  void add(X509 *certificate) { sk_X509_push(list_, certificate); }
  STACK_OF(X509) *get() const { return list_; }

private:
  STACK_OF(X509) *list_;
};

/// DER of a value, by its own function of OpenSSL ("i2d_X509").
template <class Write, class T> std::string der_of(Write write, T *value) {
  const int size = write(value, nullptr);
  if (size <= 0) return {};
  std::string out(static_cast<std::size_t>(size), '\0');
  auto *to = reinterpret_cast<unsigned char *>(out.data());
  write(value, &to);
  return out;
}

/// The common name of who a certificate is for, else all of the name.
std::string name_of(const X509 *certificate);
std::string fingerprint_of(const X509 *certificate); ///< SHA-256 of its DER, in hexadecimal

/// Every certificate of a PEM text, or the one of a DER file.
std::vector<Certificate> certificates_in(std::string_view file);

/// The attribute that binds a signature to its certificates (RFC 5035, section 3), with SHA-256 and in this order, DER.
std::string bound_to(X509 *signer, const std::vector<X509 *> &others);

} // namespace strakebook::issue
