#include "strakebook/steel/amend/marks.h"

#include <algorithm>
#include <functional>
#include <map>

#include "strakebook/base/text.h"
#include "strakebook/steel/assess/words.h"
#include "strakebook/steel/survey/as_written.h"
#include "strakebook/steel/survey/reach.h"

namespace strakebook::amend {

using survey::Mark;
using survey::Survey;

namespace {

template <class E> std::string word(E value) {
  for (const auto &choice : survey::choices_of(value))
    if (choice.value == value) return std::string(choice.word);
  return {}; // a mark that was read has no status word
}

bool is_read(const Mark *mark) { return mark && mark->status == survey::Status::read && !mark->repeats.empty(); }

bool on_listed_doubler(const Survey &survey, const Mark &mark) {
  return std::ranges::any_of(survey.doublers, [&](const survey::Doubler &doubler) {
    return survey::covers(survey, doubler.over, mark.row, mark.station.value);
  });
}

/// The plate that a mark lies on, where that is the mark's own word.
std::string own_plate(const Survey &here, const Mark *mark, const Survey &there, const Mark *other) {
  if (!mark) return {};
  const bool follows = other && on_listed_doubler(here, *mark) != on_listed_doubler(there, *other);
  return follows ? std::string() : word(mark->plate);
}

std::optional<base::Length> remaining_of(const Edition &edition, const Mark *mark) {
  if (!mark) return std::nullopt;
  const auto &result = edition.assessment.marks.at(static_cast<std::size_t>(mark - edition.survey.marks.data()));
  return result.used ? std::optional(result.remaining) : std::nullopt;
}

How how_of(const Mark *before, const Mark *after) {
  if (!before) return How::added;
  if (!after) return How::withdrawn;
  if (is_read(before) == is_read(after)) return How::changed;
  return is_read(before) ? How::withdrawn : How::added;
}

/// What differs between two states of one mark; nullptr: it was not there.
std::vector<Difference> differences(const Survey &survey_before, const Mark *before, const Survey &survey_after, const Mark *after) {
  std::vector<Difference> found;
  const auto see = [&](const char *field, std::string was, std::string is) {
    if (was != is) found.push_back({field, std::move(was), std::move(is)});
  };
  const auto say = [&](const char *field, const std::function<std::string(const Mark &)> &text) {
    see(field, before ? text(*before) : "", after ? text(*after) : "");
  };
  say("reading", reading_text);
  say("status", [](const Mark &mark) { return word(mark.status); });
  say("station", [](const Mark &mark) { return mark.station.raw; });
  say("surface", [](const Mark &mark) { return word(mark.surface); });
  say("coating-thickness", [](const Mark &mark) { return mark.coating ? survey::with_unit(*mark.coating) : ""; });
  see("plate", own_plate(survey_before, before, survey_after, after), own_plate(survey_after, after, survey_before, before));
  say("gauge", [](const Mark &mark) { return mark.gauge; });
  say("reduce", [](const Mark &mark) { return std::string(assess::word_of(mark.reduce)); });
  say("why", [](const Mark &mark) { return mark.why.text; });
  return found;
}

/// Marks by where they are.
class ByPlace {
public:
  explicit ByPlace(const std::vector<Mark> &marks) {
    for (const Mark &mark : marks) {
      named_.emplace(mark.id(), &mark);
      placed_.emplace(std::pair(mark.row, mark.station.value), &mark);
    }
  }
  const Mark *same_as(const Mark &mark) const {
    if (const auto found = named_.find(mark.id()); found != named_.end()) return found->second;
    const auto found = placed_.find(std::pair(mark.row, mark.station.value));
    return found == placed_.end() ? nullptr : found->second;
  }

private:
  std::map<std::string, const Mark *> named_;
  std::map<std::pair<std::string, base::Length>, const Mark *> placed_;
};

void add_change(std::vector<Change> &changes, const Edition &before, const Mark *old, const Edition &after, const Mark *now) {
  auto found = differences(before.survey, old, after.survey, now);
  if (found.empty()) return;
  Change change{.kind = Kind::reading, .how = how_of(old, now), .subject = now ? now->id() : old->id(), .span = now ? now->span : after.survey.span};
  change.differences = std::move(found);
  change.remaining_before = remaining_of(before, old);
  change.remaining_after = remaining_of(after, now);
  changes.push_back(std::move(change));
}

} // namespace

std::string reading_text(const Mark &mark) {
  constexpr std::string_view millimetres = " mm";
  std::vector<std::string> figures;
  for (const auto &repeat : mark.repeats) {
    auto figure = survey::with_unit(repeat);
    if (figure.ends_with(millimetres)) figure.resize(figure.size() - millimetres.size());
    figures.push_back(std::move(figure));
  }
  return base::joined(figures, " ");
}

std::string cell_text(const Mark &mark) {
  const auto figures = reading_text(mark), status = word(mark.status);
  if (mark.status == survey::Status::queried) return figures; // its query stands behind the figure
  return figures + (figures.empty() || status.empty() ? "" : " ") + status;
}

std::vector<Change> changed_marks(const Edition &before, const Edition &after) {
  const ByPlace was(before.survey.marks), is(after.survey.marks);
  std::vector<Change> changes;
  for (const Mark &mark : after.survey.marks) add_change(changes, before, was.same_as(mark), after, &mark);
  for (const Mark &mark : before.survey.marks)
    if (!is.same_as(mark)) add_change(changes, before, &mark, after, nullptr);
  return changes;
}

} // namespace strakebook::amend
