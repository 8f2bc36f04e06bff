#include "strakebook/issue/verify.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/digest.h"
#include "strakebook/issue/layers.h"

namespace strakebook::issue {

namespace {

Examined examined(std::string_view pdf, const Against &against) {
  Examined found{.pdf = pdf, .digest = base::sha256_hex(pdf), .contents = file::contents_of(pdf), .revisions = file::revisions_apart(pdf)};
  found.inputs = found_inputs(found.contents, against.beside);
  if (against.register_)
    found.identity = identity_of(pdf, *against.register_, found.inputs.manifest ? &*found.inputs.manifest : nullptr);
  if (found.revisions && found.revisions->signature)
    found.signature = check_signature(found.revisions->signature->der, found.revisions->signature->covered, against.known_certificate);
  return found;
}

/// Of a broken register only what replaces is believed: it can hide a later issue, and is not trusted to deny one.
Superseded superseded(const Verification &of, const Against &against) {
  if (!against.register_ || of.report.empty()) return {};
  const auto *last = against.register_->last_issue(of.report);
  if (last && last->issue > of.issue)
    return {Superseded::By::issue, last->issue, base::iso(last->date), last->document.digest};
  const bool known = !against.register_broken && against.register_->of(of.report, of.issue, of.addendum);
  return {.by = known ? Superseded::By::none : Superseded::By::not_known};
}

void add_addenda(const Register &register_, Verification &to) {
  for (const auto &entry : register_.entries)
    if (entry.report == to.report && entry.issue == to.issue && entry.addendum > 0 && entry.addendum != to.addendum)
      to.addenda.emplace_back(entry.addendum, base::iso(entry.date));
}

void say_what_it_is(const Examined &pdf, Verification &to) {
  if (const auto *entry = pdf.identity.entry) {
    to.what = pdf.identity.what;
    to.report = entry->report;
    to.issue = entry->issue;
    to.addendum = entry->addendum;
    to.state = entry->state;
    to.date = base::iso(entry->date);
  } else if (const auto &manifest = pdf.inputs.manifest) {
    to.what = manifest->addendum == 0 ? What::report : What::addendum;
    to.report = manifest->report;
    to.issue = manifest->issue;
    to.addendum = manifest->addendum;
  }
  if (pdf.signature) to.signer = pdf.signature->name;
}

} // namespace

std::string name_of(std::string_view report, int issue, int addendum) {
  return fmt::format("{} issue {}{}", report, issue, addendum == 0 ? "" : fmt::format(" addendum {}", addendum));
}

bool Verification::broken() const {
  return std::ranges::any_of(layers, [](const Layer &layer) { return layer.answer == Answer::broken; });
}

Verification verify(std::string_view pdf, const Against &against) {
  const auto found = examined(pdf, against);
  Verification verification;
  say_what_it_is(found, verification);
  verification.superseded = superseded(verification, against);
  if (against.register_) add_addenda(*against.register_, verification);
  for (const auto layer : {register_layer, file_layer, inputs_layer, rendering_layer, signature_layer})
    verification.layers.push_back(layer(found, against));
  return verification;
}

} // namespace strakebook::issue
