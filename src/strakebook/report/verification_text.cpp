#include "strakebook/issuing.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "strakebook/base/text.h"

namespace strakebook {

namespace {

using issue::Answer;
using issue::Superseded;
using issue::What;

std::string_view word(Answer answer) {
  switch (answer) {
  case Answer::holds: return "holds";
  case Answer::broken: return "broken";
  case Answer::cannot_be_checked: break;
  }
  return "cannot be checked";
}

std::string_view word(What what) {
  switch (what) {
  case What::report: return "report";
  case What::addendum: return "addendum";
  case What::stamped_copy: return "stamped copy";
  case What::companion: return "companion";
  case What::unknown: break;
  }
  return "unknown";
}

std::string_view word(Superseded::By by) {
  switch (by) {
  case Superseded::By::none: return "none";
  case Superseded::By::issue: return "issue";
  case Superseded::By::not_known: break;
  }
  return "not known";
}

std::string subject(const issue::Verification &found) {
  if (found.what == What::unknown) return "An unknown document";
  const char *before = found.what == What::stamped_copy ? "A stamped copy of " : found.what == What::companion ? "A letter sent with " : "";
  std::string text = fmt::format("{}{}, issue {}", before, found.report, found.issue);
  if (found.addendum > 0) text += fmt::format(", addendum {}", found.addendum);
  if (!found.state.empty()) text += fmt::format(", {}, of {}", found.state, found.date);
  return text;
}

std::string replaced(const Superseded &superseded) {
  switch (superseded.by) {
  case Superseded::By::none: return "No later issue is registered.";
  case Superseded::By::issue:
    return fmt::format("Replaced by issue {} of {}, SHA-256 {}.", superseded.issue, superseded.date, superseded.digest);
  case Superseded::By::not_known: break;
  }
  return "Whether a later issue replaces it is not known here.";
}

/// The names of the layers that answer so.
std::string layers_that(const issue::Verification &found, Answer answer) {
  std::vector<std::string> names;
  for (const auto &layer : found.layers)
    if (layer.answer == answer) names.push_back(layer.name);
  return base::joined(names, ", ");
}

std::string outcome(const issue::Verification &found) {
  const auto broken = layers_that(found, Answer::broken), not_checked = layers_that(found, Answer::cannot_be_checked);
  std::string first = broken.empty() ? std::string("Nothing is broken.") : fmt::format("Broken: {}.", broken);
  if (broken.empty() && found.superseded.by == Superseded::By::issue) first = "Not altered, but REPLACED: it is not to be relied on.";
  if (broken.empty() && found.superseded.by == Superseded::By::not_known) first += " Whether it still stands cannot be told here.";
  return not_checked.empty() ? first : fmt::format("{} Not checked: {}.", first, not_checked);
}

bool moves_or_hides(char32_t letter) {
  const bool control = letter < 0x20 || (letter >= 0x7F && letter < 0xA0);
  const bool direction = (letter >= 0x202A && letter <= 0x202E) || (letter >= 0x2066 && letter <= 0x2069);
  return control || direction;
}

/// A line fit for a terminal: a file that was made to deceive names its parts as it likes.
std::string plain(const std::string &text) {
  std::string out;
  for (const char32_t letter : base::code_points(text)) out += base::utf8(moves_or_hides(letter) ? U'\uFFFD' : letter);
  return out + "\n";
}

} // namespace

std::string verification_text(const issue::Verification &found) {
  std::string text = plain(subject(found)) + plain(replaced(found.superseded));
  for (const auto &[number, date] : found.addenda) text += plain(fmt::format("Addendum {} of {} belongs to it.", number, date));
  for (const auto &layer : found.layers) text += plain(fmt::format("  {:<10} {}: {}", layer.name, word(layer.answer), layer.why));
  return text + plain(outcome(found));
}

std::string verification_json(const issue::Verification &found) {
  auto layers = nlohmann::ordered_json::array(), addenda = layers;
  for (const auto &layer : found.layers) layers.push_back({{"name", layer.name}, {"answer", word(layer.answer)}, {"why", layer.why}});
  for (const auto &[number, date] : found.addenda) addenda.push_back({{"addendum", number}, {"date", date}});
  const auto &by = found.superseded;
  const nlohmann::ordered_json all = {
      {"what", word(found.what)}, {"report", found.report}, {"issue", found.issue}, {"addendum", found.addendum}, {"state", found.state},
      {"date", found.date}, {"signer", found.signer},
      {"superseded", {{"by", word(by.by)}, {"issue", by.issue}, {"date", by.date}, {"digest", by.digest}}},
      {"addenda", addenda}, {"layers", layers}, {"broken", found.broken()}};
  return all.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

} // namespace strakebook
