#include <algorithm>
#include <map>

#include "strakebook/compose/instrument_tables.h"
#include "strakebook/compose/looks.h"

/// How the figures of a mark were taken and reduced.
namespace strakebook::compose {

using content::plain;

namespace {

using survey::Reduction;

bool was_read(const survey::Mark &mark) { return mark.status == survey::Status::read; }

int reduced_by(const Scope &scope, Reduction reduction) {
  return static_cast<int>(std::ranges::count_if(
      scope.survey().marks, [&](const auto &mark) { return was_read(mark) && mark.reduce == reduction; }));
}

std::string reduction_words(const Scope &scope) {
  const int least = reduced_by(scope, Reduction::least_of_repeats), mean = reduced_by(scope, Reduction::mean_of_repeats);
  const base::Fill n{"n", std::to_string(least)}, m{"m", std::to_string(mean)};
  if (mean == 0)
    return scope.say("instruments.reduction");
  return least == 0 ? scope.say("instruments.reduction-mean") : scope.say("instruments.reduction-both", {n, m});
}

/// Marks read single echo, by what the film is said to be as it was written; empty: not said.
std::map<std::string, std::vector<std::size_t>> by_film(const Scope &scope) {
  std::map<std::string, std::vector<std::size_t>> out;
  const auto &marks = scope.survey().marks;
  for (std::size_t i = 0; i < marks.size(); ++i)
    if (was_read(marks[i]) && marks[i].surface == survey::Surface::coated_single_echo)
      out[marks[i].coating ? as_written(*marks[i].coating) : std::string()].push_back(i);
  return out;
}

std::string single_echo_words(const Scope &scope, const std::string &film, const std::vector<std::size_t> &marks) {
  const base::Fill n{"n", std::to_string(marks.size())};
  if (film.empty())
    return scope.say("instruments.single-echo-open", {n});
  const auto &factor = scope.policy().single_echo;
  const Length thickness = scope.survey().marks[marks.front()].coating->value;
  const auto times = [&](const base::Decimal &by) { return fixed_mm(base::scaled_up(thickness, by.ratio()), 2); };
  return scope.say("instruments.single-echo", {n,
                                               {"film", film},
                                               {"least", figure(factor.least)},
                                               {"most", figure(factor.most)},
                                               {"low", times(factor.least)},
                                               {"high", unit_mm(scope, times(factor.most))}});
}

} // namespace

std::vector<content::Block> reduction_and_surfaces(const Scope &scope) {
  std::vector<content::Block> out;
  const base::Fill n{"n", std::to_string(scope.assessment().repeats_apart)};
  const base::Fill most{"most", unit_mm(scope, base::mm_exact(scope.policy().repeat_spread, 1))};
  out.push_back(paragraph(plain(reduction_words(scope) + " " + scope.say("instruments.repeats-apart", {n, most})), look::text));
  std::map<survey::Surface, int> count;
  for (const auto &mark : scope.survey().marks)
    if (was_read(mark))
      ++count[mark.surface];
  content::List list;
  for (const auto &[surface, number] : count)
    list.items.push_back(plain(scope.say(
        "instruments.surface", {{"n", std::to_string(number)}, {"surface", surface_word(scope, surface)}})));
  for (const auto &[film, marks] : by_film(scope))
    list.items.push_back(plain(single_echo_words(scope, film, marks)));
  out.push_back(block(std::move(list)));
  return out;
}

} // namespace strakebook::compose
