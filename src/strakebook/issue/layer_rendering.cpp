#include "strakebook/issue/layers.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/text.h"

namespace strakebook::issue {

namespace {

Layer answer(Answer answer, std::string why) { return {"rendering", answer, std::move(why)}; }

/// What made the one and not the other.
std::vector<std::string> lacking(const Makers &one, const Makers &other) {
  std::vector<std::string> names;
  if (one.tool != other.tool) names.push_back(one.tool);
  for (const auto &library : one.libraries)
    if (std::ranges::find(other.libraries, library) == other.libraries.end()) names.push_back(library);
  return names;
}

std::string other_makers(const Makers &made, const Makers &here) {
  const auto by = lacking(made, here), now = lacking(here, made);
  return fmt::format("it was made with {}, and here is {}", base::joined(by, ", "), now.empty() ? "none of that" : base::joined(now, ", "));
}

/// A few letters of a page round the place where two differ.
std::string round_about(const std::u32string &text, std::size_t place) {
  constexpr std::size_t before = 12, after = 16;
  const auto first = place > before ? place - before : 0;
  std::string said;
  for (const char32_t letter : text.substr(first, before + after)) said += base::utf8(letter);
  return said;
}

std::string difference_in_words(const std::vector<std::string> &found, const std::vector<std::string> &made) {
  if (found.size() != made.size()) return fmt::format("it has {} pages and its inputs make {}", found.size(), made.size());
  const auto [here, there] = std::ranges::mismatch(found, made);
  if (here == found.end()) return {};
  const auto one = base::code_points(*here), other = base::code_points(*there);
  const auto place = static_cast<std::size_t>(std::ranges::mismatch(one, other).in1 - one.begin());
  return fmt::format("page {} reads (without blanks) \"{}\" and its inputs make \"{}\"", here - found.begin() + 1, round_about(one, place),
                     round_about(other, place));
}

Layer compared(const Examined &pdf, std::string_view made) {
  const auto written = pdf.revisions && pdf.revisions->signature ? pdf.pdf.substr(0, pdf.revisions->first) : pdf.pdf;
  if (written == made)
    return answer(Answer::holds, fmt::format("its inputs make the same {} bytes here{}", made.size(),
                                             written.size() < pdf.pdf.size() ? "; only the signature follows them" : ""));
  if (written.starts_with(made))
    return answer(Answer::broken, fmt::format("it begins with the {} bytes that its inputs make; {} follow them", made.size(), written.size() - made.size()));
  const auto other = file::contents_of(made);
  const auto words = pdf.contents && other ? difference_in_words(pdf.contents->pages, other->pages) : "";
  const auto place = std::ranges::mismatch(written, made).in1 - written.begin();
  return answer(Answer::broken, fmt::format("from byte {} on it is not what its inputs make{}{}", place + 1, words.empty() ? "" : ": ", words));
}

} // namespace

Layer rendering_layer(const Examined &pdf, const Against &against) {
  if (pdf.identity.what == What::companion) return answer(Answer::cannot_be_checked, "a companion of a report is not made again");
  if (pdf.identity.what == What::stamped_copy && pdf.identity.likeness == Likeness::same)
    return answer(Answer::cannot_be_checked, "a stamped copy is not made again; the issue that it is a copy of is");
  if (!pdf.inputs.whole()) return answer(Answer::cannot_be_checked, "its inputs are not here as they were kept");
  const auto &manifest = *pdf.inputs.manifest;
  if (manifest.makers != against.here) return answer(Answer::cannot_be_checked, other_makers(manifest.makers, against.here));
  const auto made = against.make_again(pdf.inputs.files, manifest);
  if (made.pdf.empty()) return answer(Answer::broken, "its inputs make no report: " + made.why);
  return compared(pdf, made.pdf);
}

} // namespace strakebook::issue
