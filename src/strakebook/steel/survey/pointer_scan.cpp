#include "strakebook/steel/survey/pointer_scan.h"

#include <algorithm>
#include <array>
#include <optional>

#include "strakebook/steel/survey/reach.h"

namespace strakebook::survey {

namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }
bool capital(char c) { return c >= 'A' && c <= 'Z'; }
bool letter(char c) {
  return capital(c) || (c >= 'a' && c <= 'z') || (static_cast<unsigned char>(c) & 0x80) != 0;
}
bool blank(char c) { return c == ' ' || c == '\n' || c == '\t'; }

std::string_view word_at(std::string_view text, std::size_t at) {
  auto end = at;
  while (end < text.size() && (digit(text[end]) || letter(text[end])))
    ++end;
  return text.substr(at, end - at);
}

/// "9", "9.4": figures, with a point only where a figure follows it.
std::string_view number_at(std::string_view text, std::size_t at) {
  auto end = at;
  while (end < text.size() && (digit(text[end]) || (text[end] == '.' && end > at && end + 1 < text.size() &&
                                                    digit(text[end + 1]))))
    ++end;
  if (end < text.size() && letter(text[end]))
    return {};
  return text.substr(at, end - at);
}

/// "9.4", or "12 ft 6 in" and "12'6\"" where the survey counts stations in feet.
std::string_view station_at(const Survey &survey, std::string_view text, std::size_t at) {
  constexpr std::string_view inch_ends[] = {" in", "\""};
  if (survey.datum.station_unit == base::Unit::foot)
    for (const auto end : inch_ends)
      if (const auto found = text.find(end, at); found != text.npos) {
        const auto whole = text.substr(at, found + end.size() - at);
        base::MeasuredError wrong;
        const auto after = at + whole.size();
        const bool goes_on = after < text.size() && letter(text[after]);
        if (!goes_on && base::feet_and_inches(whole) && base::parse_feet_and_inches(whole, wrong))
          return whole;
      }
  return number_at(text, at);
}

template <class T> bool has(const std::vector<T> &all, std::string_view id) {
  return std::any_of(all.begin(), all.end(), [&](const T &one) { return one.id == id; });
}

bool leads(const Survey &survey, Target target, std::string_view id) {
  switch (target) {
  case Target::mark:
    return mark_of(survey, id) != nullptr;
  case Target::pit:
    return has(survey.pits, id);
  case Target::doubler:
    return has(survey.doublers, id);
  case Target::note:
    return has(survey.notes, id);
  case Target::photo:
    return has(survey.photos, id);
  case Target::recommendation:
    return has(survey.recommendations, id);
  case Target::steelwork:
    return has(survey.steelwork, id);
  case Target::limitation:
    return has(survey.limitations, id);
  case Target::zone:
    return has(survey.zones, id);
  }
  return false;
}

/// A place that the survey names although no mark is there.
bool known_place(const Survey &survey, std::string_view row, std::string_view station) {
  base::MeasuredError wrong;
  const auto at = base::parse_measured(station, survey.datum.station_unit, wrong);
  if (!at)
    return false;
  const auto here = [&](const Place &place) { return place.row == row && place.station.value == at->value; };
  const auto within = [&](const Reach &reach) {
    return reach.from && reach.to && covers(survey, reach, row, at->value);
  };
  const auto any = [](const auto &all, const auto &test) {
    return std::any_of(all.begin(), all.end(), test);
  };
  return any(survey.pits, [&](const Pit &p) { return here(p.at); }) ||
         any(survey.photos, [&](const Photo &p) { return here(p.at); }) ||
         any(survey.doublers, [&](const Doubler &d) { return within(d.over); }) ||
         any(survey.notes, [&](const Note &n) { return within(n.at); }) ||
         any(survey.recommendations, [&](const Recommendation &r) { return within(r.at); }) ||
         any(survey.steelwork, [&](const SteelworkItem &s) { return within(s.at); }) ||
         any(survey.limitations, [&](const Limitation &l) { return within(l.at); });
}

/// P3, D1, N2, S1. S and three figures is a grade of steel.
std::optional<Target> numbered(std::string_view word) {
  const auto figures = word.substr(word.empty() ? 0 : 1);
  const bool number =
      !figures.empty() && figures.front() != '0' && std::all_of(figures.begin(), figures.end(), digit);
  if (!number || figures.size() > 4)
    return std::nullopt;
  switch (word.front()) {
  case 'P':
    return Target::pit;
  case 'D':
    return Target::doubler;
  case 'N':
    return Target::note;
  case 'S':
    return figures.size() < 3 ? std::optional(Target::steelwork) : std::nullopt;
  default:
    return std::nullopt;
  }
}

struct Keyword {
  std::string_view one, several;
  Target target;
};
constexpr std::array keywords{
    Keyword{"photo", "photos", Target::photo}, Keyword{"item", "items", Target::recommendation},
    Keyword{"limitation", "limitations", Target::limitation}, Keyword{"zone", "zones", Target::zone}};

/// The same word with a small first letter, so that a sentence may begin with it.
bool same_word(std::string_view word, std::string_view keyword) {
  if (word.size() != keyword.size())
    return false;
  const char first = capital(word.front()) ? static_cast<char>(word.front() - 'A' + 'a') : word.front();
  return first == keyword.front() && word.substr(1) == keyword.substr(1);
}

/// What may follow a keyword: a number, or a zone's capitals.
std::string_view name_after(std::string_view text, std::size_t at, Target target) {
  if (target != Target::zone)
    return number_at(text, at);
  const auto word = word_at(text, at);
  const auto rest = std::find_if_not(word.begin(), word.end(), capital);
  return rest != word.begin() && std::all_of(rest, word.end(), digit) ? word : std::string_view{};
}

/// Length of ", " or " and " at `at`; 0: the list ends here.
std::size_t link(std::string_view text, std::size_t at) {
  for (const std::string_view between : {", ", " and ", " or ", ","})
    if (text.substr(at, between.size()) == between)
      return between.size();
  return 0;
}

class Scanner {
public:
  Scanner(const Survey &survey, std::string_view text) : survey_(survey), text_(text) {}

  std::vector<FoundPointer> run() {
    while (at_ < text_.size()) {
      const auto word = word_at(text_, at_);
      if (word.empty())
        ++at_;
      else if (!by_number(word) && !by_keyword(word) && !by_row(word))
        at_ += word.size();
    }
    return std::move(found_);
  }

private:
  void add(std::size_t begin, std::size_t end, Target target, std::string id) {
    const bool there = leads(survey_, target, id);
    found_.push_back({begin, end - begin, target, std::move(id), there, false});
    at_ = end;
  }

  bool by_number(std::string_view word) {
    const auto target = numbered(word);
    if (!target)
      return false;
    const auto begin = at_, end = at_ + word.size();
    const std::string id(word);
    add(begin, end, *target, id);
    for (const std::string_view dash :
         {"-", "\u2013"}) { // P5-P8 is one reference, and both ends have to be there
      if (text_.substr(end, dash.size()) != dash)
        continue;
      const auto last = word_at(text_, end + dash.size());
      if (numbered(last) != target)
        continue;
      auto &range = found_.back();
      range.length = dash.size() + word.size() + last.size();
      range.leads = range.leads && leads(survey_, *target, last);
      at_ = begin + range.length;
    }
    return true;
  }

  bool by_keyword(std::string_view word) {
    for (const auto &keyword : keywords) {
      const bool several = same_word(word, keyword.several);
      if (!several && !same_word(word, keyword.one))
        continue;
      const auto after = at_ + word.size();
      if (after >= text_.size() || !blank(text_[after]))
        return false;
      auto name = name_after(text_, after + 1, keyword.target);
      if (name.empty())
        return false;
      add(at_, after + 1 + name.size(), keyword.target, std::string(name));
      for (auto step = link(text_, at_); several && step > 0; step = link(text_, at_)) {
        name = name_after(text_, at_ + step, keyword.target);
        if (name.empty())
          break;
        add(at_ + step, at_ + step + name.size(), keyword.target, std::string(name));
      }
      return true;
    }
    return false;
  }

  bool by_row(std::string_view word) {
    const auto after = at_ + word.size();
    if (!row_of(survey_, word) || after + 1 >= text_.size() || !blank(text_[after]))
      return false;
    const auto station = station_at(survey_, text_, after + 1);
    if (station.empty())
      return false;
    add(at_, after + 1 + station.size(), Target::mark, std::string(word) + " " + std::string(station));
    found_.back().place = !found_.back().leads && known_place(survey_, word, station);
    return true;
  }

  const Survey &survey_;
  std::string_view text_;
  std::size_t at_ = 0;
  std::vector<FoundPointer> found_;
};

} // namespace

std::vector<FoundPointer> scan_pointers(const Survey &survey, std::string_view text) {
  return Scanner(survey, text).run();
}

} // namespace strakebook::survey
