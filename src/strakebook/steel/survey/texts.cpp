#include "strakebook/steel/survey/texts.h"

#include <algorithm>

#include "strakebook/base/text.h"
#include "strakebook/steel/survey/fields.h"
#include "strakebook/steel/survey/readings.h"

namespace strakebook::survey {

namespace {

/// Shows every text of a survey to a function: the field table, walked over what is there.
class ProseWalk : public Fields {
public:
  explicit ProseWalk(SeeWords see) : see_(std::move(see)) {}
  void inherited_source(const Key &) override {}

protected:
  void leaf(const Key &, const Shape &, const Store &) override {}
  void map(const Key &, const Body &body) override { body(*this, {}); }
  void list(const Key &, bool, const Elements &elements) override { walk(elements); }
  void named(const Key &, Ids, const Elements &elements) override { walk(elements); }
  void prose(const Words &words) override { see_(words); }

private:
  void walk(const Elements &elements) {
    elements.each([this](const Element &) -> Fields & { return *this; });
  }

  SeeWords see_;
};

bool goes_on(char c) { return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }

int lines_of(const base::SourceFile &file) {
  return static_cast<int>(std::ranges::count(file.text, '\n')) + 1;
}

} // namespace

void each_text(const Survey &survey, const SeeWords &see) {
  const auto placed = [&](const Words &words) {
    if (words.given())
      see({words.text, words.span.line > 0 ? words.span : survey.span});
  };
  // The table hands out places to write to, so it walks a copy.
  SurveyFile copy{.version = 0, .survey = survey, .readings = {}};
  ProseWalk walk(placed);
  fields(walk, copy);
  for (const Mark &mark : survey.marks)
    placed(mark.why);
}

base::SourceSpan place_in(const base::SourceSpan &span, std::string_view part) {
  if (!span.file)
    return span;
  const int last = lines_of(*span.file);
  for (int line = span.line; line <= last; ++line) {
    const auto text = base::line_text(*span.file, line);
    for (auto at = text.find(part); at != std::string_view::npos; at = text.find(part, at + 1)) {
      const int column = static_cast<int>(base::code_point_count(text.substr(0, at))) + 1;
      const auto end = at + part.size();
      const bool whole = end >= text.size() || !goes_on(text[end]) || !goes_on(part.back());
      if (whole && (line > span.line || column >= span.column))
        return {span.file, line, column, static_cast<int>(base::code_point_count(part))};
    }
  }
  return span;
}

} // namespace strakebook::survey
