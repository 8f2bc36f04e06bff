#include <algorithm>

#include <openssl/err.h>

#include "strakebook/issue/openssl.h"
#include "strakebook/issue/signer.h"

namespace strakebook::issue {

namespace {

Cms read(std::string_view der) {
  const auto *at = reinterpret_cast<const unsigned char *>(der.data());
  Cms message(d2i_CMS_ContentInfo(nullptr, &at, static_cast<long>(der.size())));
  ERR_clear_error();
  const bool whole = message && at == reinterpret_cast<const unsigned char *>(der.data() + der.size());
  return whole ? std::move(message) : Cms();
}

/// The values that stand in a value of DER, one after the other, each with its head.
std::vector<std::string_view> values_in(std::string_view value) {
  std::vector<std::string_view> out;
  const auto *at = reinterpret_cast<const unsigned char *>(value.data());
  const auto *const end = at + value.size();
  long length = 0;
  int tag = 0, kind = 0;
  if ((ASN1_get_object(&at, &length, &tag, &kind, end - at) & 0x80) != 0) return out;
  while (at < end) {
    const auto *const begins = at;
    if ((ASN1_get_object(&at, &length, &tag, &kind, end - at) & 0x80) != 0) return {};
    at += length;
    out.emplace_back(reinterpret_cast<const char *>(begins), static_cast<std::size_t>(at - begins));
  }
  return out;
}

/// The versions that RFC 5652, 5.1 and 5.3, asks of such a message. OpenSSL reads them and does not look.
bool versions_as_written(std::string_view der) {
  constexpr std::string_view one("\x02\x01\x01", 3);
  const auto signed_data = values_in(values_in(values_in(der).at(1)).at(0));
  return signed_data.at(0) == one && values_in(values_in(signed_data.back()).at(0)).at(0) == one;
}

/// SHA-256 with RSA (RFC 3370, 3.2) or ECDSA (RFC 5753, 2.1.1), named as this program names them: OpenSSL looks at the key and not
/// at every part of the name.
bool algorithm_as_written(CMS_SignerInfo *signer) {
  X509_ALGOR *algorithm = nullptr;
  CMS_SignerInfo_get0_algs(signer, nullptr, nullptr, nullptr, &algorithm);
  const ASN1_OBJECT *kind = nullptr;
  int beside = 0;
  X509_ALGOR_get0(&kind, &beside, nullptr, algorithm);
  const int name = OBJ_obj2nid(kind);
  return (name == NID_rsaEncryption && beside == V_ASN1_NULL) || (name == NID_ecdsa_with_SHA256 && beside == V_ASN1_UNDEF);
}

/// A signature and nothing else: one signer, nothing that is not signed, no content of its own, spelled in the one way there is.
CMS_SignerInfo *only_signer(CMS_ContentInfo *message, std::string_view der) {
  if (OBJ_obj2nid(CMS_get0_type(message)) != NID_pkcs7_signed || der_of(i2d_CMS_ContentInfo, message) != der) return nullptr;
  auto *const *const content = CMS_get0_content(message);
  auto *const signers = CMS_get0_SignerInfos(message);
  if (!content || *content || OBJ_obj2nid(CMS_get0_eContentType(message)) != NID_pkcs7_data) return nullptr;
  if (sk_CMS_SignerInfo_num(signers) != 1 || !versions_as_written(der)) return nullptr;
  auto *const signer = sk_CMS_SignerInfo_value(signers, 0);
  return CMS_unsigned_get_attr_count(signer) <= 0 && algorithm_as_written(signer) ? signer : nullptr;
}

/// The certificates that came with it, in their order.
std::vector<Certificate> carried(CMS_ContentInfo *message) {
  std::vector<Certificate> out;
  auto *const all = CMS_get1_certs(message);
  while (all && sk_X509_num(all) > 0) out.emplace_back(sk_X509_shift(all));
  sk_X509_free(all);
  return out;
}

/// Whether the signature names just these certificates, in the order in which they stand in it.
bool names(CMS_SignerInfo *signer, X509 *own, const std::vector<X509 *> &others) {
  const auto *const found = static_cast<const ASN1_STRING *>(
      CMS_signed_get0_data_by_OBJ(signer, OBJ_nid2obj(NID_id_smime_aa_signingCertificateV2), -3, V_ASN1_SEQUENCE));
  if (!found) return false;
  const auto *const said = reinterpret_cast<const char *>(ASN1_STRING_get0_data(found));
  return bound_to(own, others) == std::string_view(said, static_cast<std::size_t>(ASN1_STRING_length(found)));
}

/// Whether the signer is named by the certificate's issuer and number, to the letter: OpenSSL takes large letters for small ones.
bool identified_by(CMS_SignerInfo *signer, X509 *certificate) {
  X509_NAME *issuer = nullptr;
  if (CMS_SignerInfo_cert_cmp(signer, certificate) != 0) return false;
  CMS_SignerInfo_get0_signer_id(signer, nullptr, &issuer, nullptr);
  return issuer && der_of(i2d_X509_NAME, issuer) == der_of(i2d_X509_NAME, X509_get_issuer_name(certificate));
}

bool vouches(X509 *known, X509 *certificate) {
  if (X509_cmp(known, certificate) == 0) return true;
  return X509_check_issued(known, certificate) == X509_V_OK && X509_verify(certificate, X509_get0_pubkey(known)) == 1;
}

std::string fault(CMS_ContentInfo *message, CMS_SignerInfo *signer, std::string_view covered, X509 *own, const std::vector<Certificate> &all,
                  std::string_view known) {
  const auto bytes = reading(covered);
  if (CMS_verify(message, nullptr, nullptr, bytes.get(), nullptr, CMS_BINARY | CMS_NO_SIGNER_CERT_VERIFY) != 1)
    return "the bytes it covers, or the signature itself, were changed after it was made";
  std::vector<X509 *> others;
  for (const auto &one : all)
    if (one.get() != own) others.push_back(one.get());
  if (!names(signer, own, others)) return "it carries other certificates than those it was made with";
  if (known.empty()) return {};
  const auto expected = certificates_in(known);
  if (expected.empty()) return "the certificate it is to be held against cannot be read";
  return vouches(expected.front().get(), own) ? "" : "it was made with another certificate than the one it is held against";
}

} // namespace

SignatureFound check_signature(std::string_view der, std::string_view covered, std::string_view known_certificate) {
  const auto message = read(der);
  auto *const signer = message ? only_signer(message.get(), der) : nullptr;
  if (!signer) return {.holds = false, .why = "it is no signature in the form that this program writes", .name = {}, .fingerprint = {}};
  const auto all = carried(message.get());
  const auto own = std::ranges::find_if(all, [&](const auto &one) { return identified_by(signer, one.get()); });
  if (own == all.end()) return {.holds = false, .why = "it does not carry the certificate that it was made with", .name = {}, .fingerprint = {}};
  auto why = fault(message.get(), signer, covered, own->get(), all, known_certificate);
  ERR_clear_error();
  return {.holds = why.empty(), .why = why, .name = name_of(own->get()), .fingerprint = fingerprint_of(own->get())};
}

} // namespace strakebook::issue
