#include "strakebook/issue/layers.h"

#include <fmt/format.h>

namespace strakebook::issue {

namespace {

Layer answer(Answer answer, std::string why) { return {"signature", answer, std::move(why)}; }

/// Was it signed when it was issued? Not known without a register.
const std::string *registered_signer(const Examined &pdf, const Against &against) {
  const auto what = pdf.identity.what;
  const bool signed_kind = what == What::report || what == What::addendum;
  return pdf.registered(against) && pdf.identity.entry && signed_kind ? &pdf.identity.entry->signer : nullptr;
}

Layer without_one(const Examined &pdf, const Against &against) {
  if (pdf.revisions && pdf.revisions->more)
    return answer(Answer::broken, "what follows the report is not one signature, as this program adds it");
  const auto *signer = registered_signer(pdf, against);
  if (signer && !signer->empty()) return answer(Answer::broken, "it was signed when it was issued, and carries no signature now");
  if (pdf.identity.what == What::stamped_copy)
    return answer(Answer::cannot_be_checked, "a stamp takes a signature out; the issue that this is a copy of may have one");
  if (!against.known_certificate.empty()) return answer(Answer::broken, "it carries none, and the certificate given should have signed it");
  return answer(Answer::cannot_be_checked, "it carries none");
}

} // namespace

Layer signature_layer(const Examined &pdf, const Against &against) {
  if (!pdf.signature) return without_one(pdf, against);
  const auto &found = *pdf.signature;
  if (!found.holds) return answer(Answer::broken, found.why);
  const auto *signer = registered_signer(pdf, against);
  if (signer && signer->empty()) return answer(Answer::broken, "it was not signed when it was issued, and is now, by " + found.name);
  if (signer && *signer != found.fingerprint)
    return answer(Answer::broken, fmt::format("it is signed with the certificate {}; registered is {}", found.fingerprint, *signer));
  return answer(Answer::holds,
                fmt::format("signed by {}, certificate SHA-256 {}; {}", found.name, found.fingerprint,
                            against.known_certificate.empty() ? "whether that name is whose it says is not checked"
                                                              : "it is the certificate given, or was issued by it"));
}

} // namespace strakebook::issue
