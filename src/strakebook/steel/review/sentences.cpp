#include <algorithm>

#include "strakebook/base/text.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

constexpr std::string_view enders = ".!?", closers = "\"')]";

bool blank(char c) { return c == ' ' || c == '\n' || c == '\t'; }
bool small(char c) { return c >= 'a' && c <= 'z'; }
bool letter(char c) { return small(c) || (c >= 'A' && c <= 'Z'); }
bool any_of(std::string_view set, char c) { return set.find(c) != std::string_view::npos; }

std::string small_letters(std::string_view word) {
  std::string out(word);
  std::ranges::transform(out, out.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return out;
}

/// The word that ends before `at`, without what opens before it.
std::string_view word_before(std::string_view text, std::size_t at) {
  auto begin = at;
  while (begin > 0 && !blank(text[begin - 1]) && !any_of("(\"'", text[begin - 1])) --begin;
  return text.substr(begin, at - begin);
}

bool abbreviated(std::string_view word, const std::vector<std::string> &abbreviations) {
  if (word.empty() || !std::ranges::all_of(word, [](char c) { return letter(c) || c == '.'; })) return false;
  return word.size() == 1 || word.find('.') != std::string_view::npos ||
         std::ranges::find(abbreviations, small_letters(word)) != abbreviations.end();
}

/// Where the sentence ends whose mark stands at `at`: behind the mark and what closes after it; 0: it does not end here.
std::size_t end_at(std::string_view text, std::size_t at, const std::vector<std::string> &abbreviations) {
  auto end = at + 1;
  while (end < text.size() && (any_of(closers, text[end]) || any_of(enders, text[end]))) ++end;
  auto next = end;
  while (next < text.size() && blank(text[next])) ++next;
  if (next == text.size()) return end;
  const bool goes_on = next == end || small(text[next]) || (text[at] == '.' && abbreviated(word_before(text, at), abbreviations));
  return goes_on ? 0 : end;
}

void add(std::vector<std::string_view> &all, std::string_view part) {
  while (!part.empty() && blank(part.front())) part.remove_prefix(1);
  while (!part.empty() && blank(part.back())) part.remove_suffix(1);
  if (!part.empty()) all.push_back(part);
}

} // namespace

std::vector<std::string_view> sentences(std::string_view text, const std::vector<std::string> &abbreviations) {
  std::vector<std::string_view> all;
  std::size_t begin = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (!any_of(enders, text[at])) continue;
    const auto end = end_at(text, at, abbreviations);
    if (end == 0) continue;
    add(all, text.substr(begin, end - begin));
    begin = end;
    at = end - 1;
  }
  add(all, text.substr(begin));
  return all;
}

Findings reason_on_page_one(const Subject &subject) {
  const survey::Words &reason = subject.survey.answer.reason;
  const policy::Prose &prose = subject.policy.prose;
  if (!reason.given()) return {};
  const auto count = static_cast<int>(sentences(reason.text, prose.abbreviations).size());
  if (count >= prose.least_sentences && count <= prose.most_sentences) return {};
  const std::string bounds = std::to_string(prose.least_sentences) + " to " + std::to_string(prose.most_sentences);
  return {{base::Code::reason_length, nearest(reason.span, subject.survey.span),
           "the reason of the answer on page one has " + std::to_string(count) + (count == 1 ? " sentence" : " sentences"),
           bounds + " sentences, each with its full stop",
           "reason: |\n  What is left against the limit that governs. What follows from it. What was found besides."}};
}

} // namespace strakebook::review
