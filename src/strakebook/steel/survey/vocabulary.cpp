#include "strakebook/steel/survey/vocabulary.h"

#include <algorithm>

#include "strakebook/base/text.h"

namespace strakebook::survey {

#define STRAKEBOOK_CHOICES(TYPE, ...)                                                                        \
  std::span<const Choice<TYPE>> choices_of(TYPE) {                                                           \
    static constexpr Choice<TYPE> list[] = {__VA_ARGS__};                                                    \
    return list;                                                                                             \
  }

STRAKEBOOK_CHOICES(State, {"draft", State::draft}, {"preliminary", State::preliminary},
                   {"final", State::final})
STRAKEBOOK_CHOICES(Side, {"port", Side::port}, {"centre", Side::centre}, {"starboard", Side::starboard})
STRAKEBOOK_CHOICES(Status, {"no-echo", Status::no_echo}, {"unstable", Status::unstable},
                   {"not-cleaned", Status::not_cleaned}, {"no-access", Status::no_access},
                   {"weld-or-fitting", Status::weld_or_fitting}, {"rejected", Status::rejected},
                   {"queried", Status::queried})
STRAKEBOOK_CHOICES(Surface, {"bare", Surface::bare}, {"coated echo-to-echo", Surface::coated_echo_to_echo},
                   {"coated single-echo", Surface::coated_single_echo})
STRAKEBOOK_CHOICES(Plate, {"hull", Plate::hull}, {"doubler", Plate::doubler})
STRAKEBOOK_CHOICES(Note::Kind, {"seen", Note::Kind::seen}, {"hammer", Note::Kind::hammer})
STRAKEBOOK_CHOICES(StatementKind, {"measured", StatementKind::measured}, {"seen", StatementKind::seen},
                   {"told", StatementKind::told}, {"inferred", StatementKind::inferred},
                   {"opinion", StatementKind::opinion})
STRAKEBOOK_CHOICES(Counts, {"aft", Counts::aft}, {"forward", Counts::forward})
STRAKEBOOK_CHOICES(StationsIn, {"m", StationsIn::metres}, {"ft", StationsIn::feet}, {"frames", StationsIn::frames})
STRAKEBOOK_CHOICES(policy::Plating, {"bottom", policy::Plating::bottom}, {"side", policy::Plating::side},
                   {"bilge", policy::Plating::bilge})
STRAKEBOOK_CHOICES(policy::CriterionKind, {"absolute", policy::CriterionKind::absolute},
                   {"percent", policy::CriterionKind::percent})
STRAKEBOOK_CHOICES(base::Unit, {"mm", base::Unit::millimetre}, {"m", base::Unit::metre},
                   {"in", base::Unit::inch}, {"thou", base::Unit::thou}, {"ft", base::Unit::foot},
                   {"um", base::Unit::micrometre})
STRAKEBOOK_CHOICES(bool, {"yes", true}, {"no", false})

#undef STRAKEBOOK_CHOICES

std::span<const std::string_view> doubt_components() {
  static constexpr std::string_view list[] = {"resolution",    "block",   "velocity",
                                              "repeatability", "surface", "coating"};
  return list;
}

std::vector<std::string> split_choices(std::string_view list) {
  std::vector<std::string> words;
  while (!list.empty()) {
    const auto bar = list.find('|');
    words.emplace_back(list.substr(0, bar));
    list = bar == std::string_view::npos ? std::string_view{} : list.substr(bar + 1);
  }
  return words;
}

namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }
bool capital(char c) { return c >= 'A' && c <= 'Z'; }
bool name_letter(char c) {
  return digit(c) || capital(c) || (c >= 'a' && c <= 'z') || c == '-' || c == '.' || c == '_';
}

bool number(std::string_view id) {
  return !id.empty() && id.size() <= 4 && id.front() != '0' && std::all_of(id.begin(), id.end(), digit);
}
bool numbered(std::string_view id, char letter) {
  return !id.empty() && id.front() == letter && number(id.substr(1));
}

bool capitals_then_figures(std::string_view id) {
  const auto letters = std::find_if_not(id.begin(), id.end(), capital);
  return letters != id.begin() && std::all_of(letters, id.end(), digit);
}

struct Form {
  IdForm form;
  char letter;
  std::string_view words, example, pattern;
};
constexpr Form forms[] = {
    {IdForm::free, 0, "letters, figures, hyphens and points, without blanks", "ut", "^[A-Za-z0-9._-]+$"},
    {IdForm::row, 0, "capital letters, then figures, at least two in all, and not like a pit's P1", "PW",
     "^(?![PDNS][0-9]+$)(?=..)[A-Z]+[0-9]*$"},
    {IdForm::zone, 0, "capital letters, then figures if need be", "W", "^[A-Z]+[0-9]*$"},
    {IdForm::pit, 'P', "P and a number", "P1", "^P[1-9][0-9]{0,3}$"},
    {IdForm::doubler, 'D', "D and a number", "D1", "^D[1-9][0-9]{0,3}$"},
    {IdForm::note, 'N', "N and a number", "N1", "^N[1-9][0-9]{0,3}$"},
    {IdForm::steelwork, 'S', "S and a number", "S1", "^S[1-9][0-9]{0,3}$"},
    {IdForm::number, 0, "a number", "1", "^[1-9][0-9]{0,3}$"},
    {IdForm::doubt, 0, "", "resolution", ""}, // its words and pattern follow from doubt_components()
};
const Form &form_of(IdForm form) { return forms[static_cast<std::size_t>(form)]; }

std::string components_with(std::string_view between) {
  const auto all = doubt_components();
  return base::joined(std::vector<std::string>(all.begin(), all.end()), between);
}

} // namespace

bool fits(IdForm form, std::string_view id) {
  switch (form) {
  case IdForm::free:
    return !id.empty() && std::all_of(id.begin(), id.end(), name_letter);
  case IdForm::zone:
    return capitals_then_figures(id);
  case IdForm::number:
    return number(id);
  case IdForm::doubt: {
    const auto known = doubt_components();
    return std::find(known.begin(), known.end(), id) != known.end();
  }
  case IdForm::row: {
    const auto letter = [&](char c) { return numbered(id, c); };
    constexpr std::string_view taken = "PDNS";
    return id.size() >= 2 && capitals_then_figures(id) && std::none_of(taken.begin(), taken.end(), letter);
  }
  default:
    return numbered(id, form_of(form).letter);
  }
}

std::string_view in_words(IdForm form) {
  static const std::string components = "one of: " + components_with(", ");
  return form == IdForm::doubt ? std::string_view(components) : form_of(form).words;
}
std::string_view example_of(IdForm form) { return form_of(form).example; }
std::string_view pattern_of(IdForm form) {
  static const std::string components = "^(" + components_with("|") + ")$";
  return form == IdForm::doubt ? std::string_view(components) : form_of(form).pattern;
}

} // namespace strakebook::survey
