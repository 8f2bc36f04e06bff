#include "strakebook/issue/layers.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/digest.h"

namespace strakebook::issue {

namespace {

Layer answer(Answer answer, std::string why) { return {"inputs", answer, std::move(why)}; }

bool kept_beside(const Entry &entry) {
  return std::ranges::any_of(entry.beside, [](const KeptFile &file) { return file.path.starts_with("inputs/"); });
}

/// Of a PDF to which nothing is attached, and beside which nothing lies.
Layer without_any(const Examined &pdf, const Against &against) {
  const auto *entry = pdf.registered(against) ? pdf.identity.entry : nullptr;
  if (pdf.identity.what == What::companion) return answer(Answer::cannot_be_checked, "it is a companion of a report and has none");
  if (entry && !kept_beside(*entry)) return answer(Answer::broken, "its inputs were attached to it, and are no more");
  return answer(Answer::cannot_be_checked, "none are attached, and no folder of them was found");
}

std::string without_blanks(std::string text) {
  std::erase(text, ' ');
  return text;
}

/// The first page, from 1, that does not carry the short digest; 0: each does.
std::size_t page_without(const std::string &short_one, const std::vector<std::string> &pages) {
  const auto found = std::ranges::find_if(pages, [&](const auto &text) { return text.find(without_blanks(short_one)) == text.npos; });
  return found == pages.end() ? 0 : static_cast<std::size_t>(found - pages.begin()) + 1;
}

} // namespace

Layer inputs_layer(const Examined &pdf, const Against &against) {
  const auto &inputs = pdf.inputs;
  if (!inputs.fault.empty()) return answer(Answer::broken, inputs.fault);
  if (inputs.list.empty()) return without_any(pdf, against);
  const auto digest = base::sha256_hex(inputs.list);
  const auto *entry = pdf.registered(against) ? pdf.identity.entry : nullptr;
  if (entry && entry->manifest != digest)
    return answer(Answer::broken, fmt::format("their list has SHA-256 {}; registered is {}", digest, entry->manifest));
  const auto printed = short_digest(digest);
  if (const auto page = page_without(printed, pdf.contents->pages); page != 0)
    return answer(Answer::broken, fmt::format("page {} does not carry {}, which is the digest of their list", page, printed));
  if (!inputs.any)
    return answer(Answer::cannot_be_checked, "only their list is attached, and no folder of them was found; each page carries the list's digest");
  return answer(Answer::holds, fmt::format("{} files {}, each as listed; the digest of the list, {}, stands on each of {} pages{}",
                                           inputs.files.size(), inputs.attached ? "attached" : "beside it", printed,
                                           pdf.contents->pages.size(), entry ? " and in the register" : ""));
}

} // namespace strakebook::issue
