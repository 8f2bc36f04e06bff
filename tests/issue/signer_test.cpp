#include <catch2/catch.hpp>

#include <openssl/cms.h>

#include "issue/throw_away_keys.h"
#include "strakebook/base/digest.h"
#include "strakebook/issue/signer.h"
#include "support/small_pdf.h"
#include "support/temp_folder.h"

namespace issue = strakebook::issue;
namespace file = strakebook::file;
namespace base = strakebook::base;
using throw_away::certificate;
using throw_away::pem;
using throw_away::pkcs12;

namespace {

const std::string covered = "the bytes that are signed";
const support::TempFolder &folder() {
  static const support::TempFolder made;
  return made;
}

issue::KeyFiles files(const std::string &key, const std::string &own = "") {
  issue::KeyFiles out{folder().write("key", key), {}};
  if (!own.empty()) out.certificate = folder().write("certificate.pem", own);
  return out;
}

issue::Signer loaded(const issue::KeyFiles &from, const std::string &passphrase = "") {
  base::Diagnostics sink;
  auto signer = issue::Signer::load(from, passphrase, sink);
  for (const auto &d : sink.all()) UNSCOPED_INFO(d.message);
  REQUIRE(signer);
  CHECK(sink.all().empty());
  return *signer;
}

/// Loading is refused, in words that say this.
void refused(const issue::KeyFiles &from, const std::string &passphrase, const std::string &says) {
  base::Diagnostics sink;
  CHECK_FALSE(issue::Signer::load(from, passphrase, sink));
  REQUIRE(sink.all().size() == 1);
  const auto &found = sink.all()[0];
  INFO(found.message);
  CHECK(found.code == base::Code::signing_failed); // SB0860
  CHECK(found.message.find(says) != std::string::npos);
  CHECK_FALSE(found.expected.empty());
  CHECK_FALSE(found.write.empty());
}

void signs(const issue::Signer &signer) {
  const auto der = signer.sign(covered);
  const auto found = issue::check_signature(der, covered);
  CHECK(found.why == "");
  CHECK(found.holds);
  CHECK(found.name == "A. Surveyor");
  CHECK(found.fingerprint == signer.fingerprint());
  CHECK_FALSE(issue::check_signature(der, covered + " ").holds);
}

} // namespace

TEST_CASE("a key in each form signs") {
  for (const auto &key : {throw_away::rsa(), throw_away::ec()}) {
    const auto own = certificate(key, {});
    CHECK(loaded(files(pem(key), pem(own))).name() == "A. Surveyor");
    signs(loaded(files(pem(key), pem(own))));
    signs(loaded(files(pem(own) + pem(key))));
    signs(loaded(files(pem(key, "two words"), pem(own)), "two words"));
    signs(loaded(files(pkcs12(key, own, "two words")), "two words"));
    signs(loaded(files(pkcs12(key, own, ""))));
  }
}

TEST_CASE("whether a key is locked is known without its passphrase") {
  const auto key = throw_away::ec();
  const auto own = certificate(key, {});
  CHECK_FALSE(issue::is_locked(folder().write("k", pem(key))));
  CHECK(issue::is_locked(folder().write("k", pem(key, "secret"))));
  CHECK_FALSE(issue::is_locked(folder().write("k", pkcs12(key, own, ""))));
  CHECK(issue::is_locked(folder().write("k", pkcs12(key, own, "secret"))));
  CHECK_FALSE(issue::is_locked(folder().write("k", "no key")));
  CHECK_FALSE(issue::is_locked(folder().path / "not there"));
}

TEST_CASE("what is wrong with a key is said, and what to do") {
  const auto key = throw_away::ec(), other = throw_away::ec();
  const auto own = certificate(key, {});
  refused(files(pem(key, "right"), pem(own)), "wrong", "not that of");
  refused(files(pem(key, "right"), pem(own)), "", "locked");
  refused(files(pkcs12(key, own, "right")), "wrong", "not that of");
  refused(files(pkcs12(key, own, "right")), "", "locked");
  refused(files(pem(key)), "", "no certificate is given");
  refused(files(pem(other), pem(own)), "", "none of the certificates");
  refused(files(pem(key), "no certificate"), "", "is no certificate");
  refused(files("no key"), "", "is no key");
  refused(files(pem(own)), "", "no private key");
  refused(files(pem(throw_away::ed25519()), pem(own)), "", "none of the certificates");
  const auto unusual = throw_away::ed25519();
  refused(files(pem(unusual), pem(certificate(unusual, {}))), "", "of a kind that readers");
  refused(files(pem(key), pem(certificate(key, {.usage = "keyEncipherment"}))), "", "not for signing");
  loaded(files(pem(key), pem(certificate(key, {.usage = ""}))));
}

TEST_CASE("a key that cannot be read is an error of reading") {
  base::Diagnostics sink;
  CHECK_FALSE(issue::Signer::load({folder().path / "not there", {}}, "", sink));
  REQUIRE(sink.all().size() == 1);
  CHECK(sink.all()[0].code == base::Code::file_unreadable);
}

TEST_CASE("a certificate signs from its first day to its last") {
  const auto key = throw_away::ec();
  const auto signer = loaded(files(pem(key), pem(certificate(key, {.from = "20260301120000Z", .to = "20260331120000Z"}))));
  base::Diagnostics sink;
  CHECK(signer.may_sign_on({2026, 3, 1}, sink));
  CHECK(signer.may_sign_on({2026, 3, 31}, sink));
  CHECK(sink.all().empty());
  CHECK_FALSE(signer.may_sign_on({2026, 2, 28}, sink));
  CHECK_FALSE(signer.may_sign_on({2026, 4, 1}, sink));
  REQUIRE(sink.errors() == 2);
  CHECK(sink.all()[0].code == base::Code::signing_failed);
  CHECK(sink.all()[0].expected.find("2026-03-01 to 2026-03-31") != std::string::npos);
}

TEST_CASE("a signature is held against the certificate that it has to be, or be issued by") {
  const auto authority = throw_away::ec(), key = throw_away::ec(), between_key = throw_away::ec();
  const auto root = certificate(authority, {.name = "Authority", .usage = "keyCertSign"});
  const auto between = certificate(between_key, {.name = "Between", .usage = "keyCertSign"}, authority, root);
  const auto own = certificate(key, {}, between_key, between);
  const auto der = loaded(files(pkcs12(key, own, "", between))).sign(covered);
  CHECK(issue::check_signature(der, covered, pem(own)).holds);
  CHECK(issue::check_signature(der, covered, pem(between)).holds);
  const auto stranger = issue::check_signature(der, covered, pem(certificate(authority, {.name = "Between"})));
  CHECK_FALSE(stranger.holds); // the right name, another key
  CHECK(stranger.why.find("another certificate") != std::string::npos);
  CHECK(stranger.name == "A. Surveyor");
  CHECK_FALSE(issue::check_signature(der, covered, "no certificate").holds);
}

TEST_CASE("a signature carries those who vouch for it, without the root, and no time") {
  const auto authority = throw_away::ec(), key = throw_away::ec(), between_key = throw_away::ec();
  const auto root = certificate(authority, {.name = "Authority", .usage = "keyCertSign"});
  const auto between = certificate(between_key, {.name = "Between", .usage = "keyCertSign"}, authority, root);
  const auto own = certificate(key, {}, between_key, between);
  const auto der = loaded(files(pem(key), pem(root) + pem(between) + pem(own))).sign(covered);
  const auto *at = reinterpret_cast<const unsigned char *>(der.data());
  auto *const message = d2i_CMS_ContentInfo(nullptr, &at, static_cast<long>(der.size()));
  REQUIRE(message);
  auto *certificates = CMS_get1_certs(message);
  CHECK(sk_X509_num(certificates) == 2);
  sk_X509_pop_free(certificates, X509_free);
  const auto *const signer = sk_CMS_SignerInfo_value(CMS_get0_SignerInfos(message), 0);
  // RFC 5652, 11.3; ETSI EN 319 142-1 asks for the one and forbids the other.
  CHECK(CMS_signed_get_attr_by_NID(signer, NID_pkcs9_signingTime, -1) < 0);
  CHECK(CMS_signed_get_attr_by_NID(signer, NID_id_smime_aa_signingCertificateV2, -1) >= 0);
  CMS_ContentInfo_free(message);
}

TEST_CASE("a signature with any byte changed does not hold") {
  const auto authority = throw_away::ec();
  const auto root = certificate(authority, {.name = "Authority", .usage = "keyCertSign"});
  for (const auto &key : {throw_away::rsa(), throw_away::ec()}) {
    const auto between_key = throw_away::ec();
    const auto between = certificate(between_key, {.name = "Between", .usage = "keyCertSign"}, authority, root);
    const auto der = loaded(files(pem(key), pem(between) + pem(certificate(key, {}, between_key, between)))).sign(covered);
    for (const int by : {1, 32, 128})
      for (std::size_t at = 0; at < der.size(); ++at) {
        auto changed = der;
        changed[at] = static_cast<char>(changed[at] ^ by);
        const auto found = issue::check_signature(changed, covered);
        INFO("byte " << at << " of " << der.size());
        CHECK_FALSE(found.holds);
        CHECK_FALSE(found.why.empty());
      }
  }
}

TEST_CASE("an RSA key signs the same bytes to the same signature") {
  const auto key = throw_away::rsa();
  const auto signer = loaded(files(pem(key), pem(certificate(key, {}))));
  CHECK(signer.sign(covered) == signer.sign(covered));
}

TEST_CASE("what is no signature does not hold") {
  for (const auto &bytes : {std::string(), std::string("no signature"), std::string("\x30\x00", 2), std::string("\x30\x82\xff\xff", 4)}) {
    const auto found = issue::check_signature(bytes, covered);
    CHECK_FALSE(found.holds);
    CHECK_FALSE(found.why.empty());
  }
  const auto key = throw_away::ec();
  const auto der = loaded(files(pem(key), pem(certificate(key, {})))).sign(covered);
  CHECK_FALSE(issue::check_signature(der + std::string(1, '\0'), covered).holds);
  CHECK_FALSE(issue::check_signature(der.substr(0, der.size() - 1), covered).holds);
}

TEST_CASE("a document is signed last, in the name of the certificate, on a day that it is valid") {
  const auto key = throw_away::ec();
  const auto signer = loaded(files(pem(key), pem(certificate(key, {}))));
  base::Diagnostics sink;
  const auto made = issue::signed_document(support::small_pdf(), {.name = "", .reason = "", .location = "", .date = "2026-10-21"}, signer, sink);
  REQUIRE(made);
  const auto found = file::revisions(*made);
  REQUIRE(found);
  REQUIRE(found->signature);
  CHECK(found->signature->words.name == "A. Surveyor");
  CHECK(issue::check_signature(found->signature->der, found->signature->covered).holds);
  CHECK(sink.all().empty());
  CHECK_FALSE(issue::signed_document(support::small_pdf(), {.name = "", .reason = "", .location = "", .date = "2028-01-01"}, signer, sink));
  CHECK(sink.errors() == 1);
}

TEST_CASE("a signature with many that vouch for it, which its room cannot hold, is refused") {
  std::string chain;
  const auto key = throw_away::ec();
  auto by = key;
  auto issuer = certificate(by, {.name = "Root"});
  for (int i = 0; i < 40; ++i) {
    const auto next = throw_away::ec();
    issuer = certificate(next, {.name = "Link " + std::to_string(i)}, by, issuer);
    by = next;
    chain += pem(issuer);
  }
  const auto signer = loaded(files(pem(by), chain));
  base::Diagnostics sink;
  CHECK_FALSE(issue::signed_document(support::small_pdf(), {}, signer, sink));
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all()[0].code == base::Code::signing_failed);
}
