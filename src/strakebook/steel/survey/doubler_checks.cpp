#include "strakebook/steel/survey/doubler_checks.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/decimal.h"
#include "strakebook/base/text.h"
#include "strakebook/steel/survey/copying_rows.h"
#include "strakebook/steel/survey/reach.h"

namespace strakebook::survey {

using base::Code;

namespace {

void over_another(const Survey &survey, std::size_t index, base::Diagnostics &sink) {
  const auto &above = survey.doublers[index];
  for (std::size_t k = 0; k < index; ++k) {
    const auto &below = survey.doublers[k];
    if (overlap(survey, below.over, above.over))
      sink.add({.code = Code::doubler_on_doubler,
                .span = above.over.span,
                .message = fmt::format("doubler {} lies over doubler {}", above.id, below.id),
                .expected = "no plate over a doubler: each on its own reach of hull plate",
                .write = fmt::format("over: a reach clear of {}", below.id)});
  }
}

void inside_elsewhere(const Survey &survey, const Doubler &doubler, base::Diagnostics &sink) {
  const auto &inner = doubler.from_inside;
  if (!inner || covers(survey, doubler.over, inner->at.row, inner->at.station.value))
    return;
  sink.add({.code = Code::dangling_reference,
            .span = inner->at.span,
            .message = fmt::format("doubler {} does not cover {} {}", doubler.id, inner->at.row, inner->at.station.raw),
            .expected = "a place behind the doubler itself",
            .write = "at: a place within its reach; a reading beside it is a mark like any other"});
}

/// A figure of the outer plate and where it comes from.
struct Figure {
  base::Length value;
  std::string words;
};

std::vector<Figure> figures_of(const Survey &survey, const Doubler &doubler) {
  std::vector<Figure> out;
  if (doubler.outer)
    out.push_back({doubler.outer->value, fmt::format("{} is declared", doubler.outer->raw)});
  for (const auto &mark : survey.marks)
    if (mark.status == Status::read && mark.plate == Plate::doubler && !mark.repeats.empty() &&
        covers(survey, doubler.over, mark.row, mark.station.value))
      out.push_back({copying::least(mark).value, fmt::format("{} reads {}", mark.id(), copying::least(mark).raw)});
  return out;
}

void figures_apart(const Survey &survey, const Doubler &doubler, base::Length most, base::Diagnostics &sink) {
  const auto figures = figures_of(survey, doubler);
  if (figures.empty())
    return;
  const auto [low, high] = std::minmax_element(figures.begin(), figures.end(),
                                               [](const Figure &a, const Figure &b) { return a.value < b.value; });
  if (high->value - low->value <= most)
    return;
  copying::warn(sink, doubler.span,
                {Code::doubler_figures, "doubler-figures " + doubler.id,
                 fmt::format("the figures of doubler {} disagree: {}, and {}", doubler.id, low->words, high->words),
                 fmt::format("figures of the outer plate within {} mm of each other", base::mm_exact(most))});
}

} // namespace

void check_doublers(const Survey &survey, const policy::Policy &policy, base::Diagnostics &sink) {
  for (std::size_t i = 0; i < survey.doublers.size(); ++i) {
    over_another(survey, i, sink);
    inside_elsewhere(survey, survey.doublers[i], sink);
    figures_apart(survey, survey.doublers[i], policy.repeat_spread, sink);
  }
}

} // namespace strakebook::survey
