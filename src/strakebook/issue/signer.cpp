#include "strakebook/issue/signer.h"

#include <algorithm>
#include <ctime>
#include <stdexcept>

#include <fmt/format.h>
#include <openssl/err.h>

#include "strakebook/issue/key_file.h"

namespace strakebook::issue {

struct Signer::State {
  KeyRing ring;
};

namespace {

void require(bool done, const char *step) {
  if (done) return;
  const char *const reason = ERR_reason_error_string(ERR_peek_last_error());
  throw std::runtime_error(fmt::format("a signature cannot be made: {}: {}", step, reason ? reason : "no reason is known"));
}

/// What is signed of a signature's attributes: the set of them in DER, as a set and not as the field they stand in
/// (RFC 5652, 5.4).
std::string attributes_signed(const CMS_SignerInfo *signer) {
  std::vector<std::string> all;
  std::string set, inner;
  for (int i = 0; i < CMS_signed_get_attr_count(signer); ++i) all.push_back(der_of(i2d_X509_ATTRIBUTE, CMS_signed_get_attr(signer, i)));
  std::ranges::sort(all); // X.690, 11.6
  for (const auto &one : all) inner += one;
  set.resize(static_cast<std::size_t>(ASN1_object_size(1, static_cast<int>(inner.size()), V_ASN1_SET)) - inner.size());
  auto *to = reinterpret_cast<unsigned char *>(set.data());
  ASN1_put_object(&to, 1, static_cast<int>(inner.size()), V_ASN1_SET, V_ASN1_UNIVERSAL);
  return set + inner;
}

std::string signature_of(EVP_PKEY *key, const std::string &bytes) {
  const std::unique_ptr<EVP_MD_CTX, Freed<EVP_MD_CTX_free>> context(EVP_MD_CTX_new());
  const auto *const from = reinterpret_cast<const unsigned char *>(bytes.data());
  std::size_t size = 0;
  require(EVP_DigestSignInit(context.get(), nullptr, EVP_sha256(), nullptr, key) == 1, "the key");
  require(EVP_DigestSign(context.get(), nullptr, &size, from, bytes.size()) == 1, "the key");
  std::string out(size, '\0');
  require(EVP_DigestSign(context.get(), reinterpret_cast<unsigned char *>(out.data()), &size, from, bytes.size()) == 1, "the key");
  out.resize(size);
  return out;
}

/// OpenSSL 3.0 always puts the time of the clock among the attributes. A report has no clock, and the form of PDF that is used here
/// forbids it (ETSI EN 319 142-1), so it is taken out and the rest signed again.
void sign_without_time(CMS_SignerInfo *signer, EVP_PKEY *key) {
  const int at = CMS_signed_get_attr_by_NID(signer, NID_pkcs9_signingTime, -1);
  if (at >= 0) X509_ATTRIBUTE_free(CMS_signed_delete_attr(signer, at));
  const auto signature = signature_of(key, attributes_signed(signer));
  require(ASN1_STRING_set(CMS_SignerInfo_get0_signature(signer), signature.data(), static_cast<int>(signature.size())) == 1, "the attributes");
}

base::Date day_of(const ASN1_TIME *time) {
  std::tm parts{};
  ASN1_TIME_to_tm(time, &parts);
  return {parts.tm_year + 1900, parts.tm_mon + 1, parts.tm_mday};
}

} // namespace

std::optional<Signer> Signer::load(const KeyFiles &files, std::string_view passphrase, base::Diagnostics &sink) {
  auto ring = read_key_ring(files, passphrase, sink);
  if (!ring) return std::nullopt;
  return Signer(std::make_shared<const State>(State{std::move(*ring)}));
}

std::string Signer::sign(std::string_view covered) const {
  const auto &ring = state_->ring;
  constexpr unsigned flags = CMS_BINARY | CMS_DETACHED | CMS_NOSMIMECAP | CMS_PARTIAL;
  const Listed others(ring.others);
  const Cms made(CMS_sign(nullptr, nullptr, others.get(), nullptr, flags));
  require(made != nullptr, "the message");
  auto *const signer = CMS_add1_signer(made.get(), ring.certificate.get(), ring.key.get(), EVP_sha256(), flags);
  require(signer != nullptr, "the certificate");
  std::vector<X509 *> vouching;
  for (const auto &one : ring.others) vouching.push_back(one.get());
  const auto binding = bound_to(ring.certificate.get(), vouching);
  require(!binding.empty() && CMS_signed_add1_attr_by_NID(signer, NID_id_smime_aa_signingCertificateV2, V_ASN1_SEQUENCE, binding.data(), static_cast<int>(binding.size())) == 1,
          "the certificate");
  const auto bytes = reading(covered);
  require(CMS_final(made.get(), bytes.get(), nullptr, flags) == 1, "the bytes");
  sign_without_time(signer, ring.key.get());
  auto der = der_of(i2d_CMS_ContentInfo, made.get());
  require(!der.empty(), "the message");
  return der;
}

std::string Signer::name() const { return name_of(state_->ring.certificate.get()); }

std::string Signer::fingerprint() const { return fingerprint_of(state_->ring.certificate.get()); }

bool Signer::may_sign_on(const base::Date &day, base::Diagnostics &sink) const {
  const auto *const certificate = state_->ring.certificate.get();
  const auto from = day_of(X509_get0_notBefore(certificate)), to = day_of(X509_get0_notAfter(certificate));
  if (from <= day && day <= to) return true;
  refuse(sink, fmt::format("the certificate of {} is not valid on {}, the day that the report is signed", name(), base::iso(day)),
         fmt::format("a day from {} to {}", base::iso(from), base::iso(to)), "a certificate that is valid on that day");
  return false;
}

std::optional<std::string> signed_document(std::string_view pdf, file::SignatureWords words, const Signer &signer, base::Diagnostics &sink) {
  if (const auto day = base::parse_date(words.date); day && !signer.may_sign_on(*day, sink)) return std::nullopt;
  if (words.name.empty()) words.name = signer.name();
  const auto room = file::prepared(pdf, words);
  auto made = file::filled(room, signer.sign(room.covered()));
  if (!made) refuse(sink, "the signature is longer than the room for it", "a certificate with few that vouch for it", "leave out those that readers have already");
  return made;
}

} // namespace strakebook::issue
