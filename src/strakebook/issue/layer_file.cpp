#include "strakebook/issue/layers.h"

#include <fmt/format.h>

namespace strakebook::issue {

namespace {

Layer answer(Answer answer, std::string why) { return {"file", answer, std::move(why)}; }

Layer registered_answer(const Examined &pdf) {
  const auto &[what, likeness, entry, file] = pdf.identity;
  switch (likeness) {
  case Likeness::same: return answer(Answer::holds, fmt::format("SHA-256 {}, as registered for {}", pdf.digest, file->path));
  case Likeness::without_signature: return answer(Answer::broken, "these are the bytes that were issued without the signature that was added to them");
  case Likeness::longer:
    return answer(Answer::broken, fmt::format("it begins with the {} bytes of {}; {} bytes follow them that were not issued", file->bytes,
                                              file->path, pdf.pdf.size() - file->bytes));
  case Likeness::claimed:
    return answer(Answer::broken, fmt::format("{} bytes, SHA-256 {}; issued were {} bytes, {}", pdf.pdf.size(), pdf.digest, file->bytes, file->digest));
  case Likeness::none: break;
  }
  return answer(Answer::broken, fmt::format("{} bytes, SHA-256 {}: no document of the register", pdf.pdf.size(), pdf.digest));
}

} // namespace

Layer file_layer(const Examined &pdf, const Against &against) {
  if (pdf.registered(against)) return registered_answer(pdf);
  if (!pdf.revisions) return answer(Answer::broken, "it does not end as a PDF does: cut short, damaged, or no PDF");
  if (pdf.revisions->more && !pdf.revisions->signature)
    return answer(Answer::broken, fmt::format("after the {} bytes of the report follow {} that are no signature", pdf.revisions->first,
                                              pdf.pdf.size() - pdf.revisions->first));
  return answer(Answer::cannot_be_checked, fmt::format("SHA-256 {}; whether this was issued only a register {}says", pdf.digest,
                                                       against.register_broken ? "that is whole " : ""));
}

} // namespace strakebook::issue
