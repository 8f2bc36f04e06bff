#include "strakebook/issue/layers.h"

#include <fmt/format.h>

namespace strakebook::issue {

namespace {

Layer answer(Answer answer, std::string why) { return {"register", answer, std::move(why)}; }

std::string claimed_name(const Examined &pdf) {
  if (!pdf.inputs.manifest) return "a document with these bytes";
  const auto &manifest = *pdf.inputs.manifest;
  return name_of(manifest.report, manifest.issue, manifest.addendum);
}

} // namespace

Layer register_layer(const Examined &pdf, const Against &against) {
  if (!against.register_)
    return answer(Answer::cannot_be_checked, "no register was found: neither whether these are the bytes that were issued nor whether a "
                                             "later issue replaces them can be known");
  if (against.register_broken) return answer(Answer::broken, against.register_fault);
  const auto &entries = against.register_->entries;
  if (!pdf.identity.entry)
    return answer(Answer::broken, fmt::format("it is whole, with {} entries, and does not have {}", entries.size(), claimed_name(pdf)));
  const auto &entry = *pdf.identity.entry;
  return answer(Answer::holds, fmt::format("each of its {} entries follows from the one before; {} is entry {}", entries.size(),
                                           name_of(entry.report, entry.issue, entry.addendum), &entry - entries.data() + 1));
}

} // namespace strakebook::issue
