#include <algorithm>

#include "strakebook/compose/robustness_parts.h"
#include "strakebook/compose/subjects.h"

/// What moves a zone's verdict, and over which ranges it holds.
namespace strakebook::compose {

using content::plain;
using robustness::InZone;
using robustness::Moved;
using What = robustness::Moved::What;

namespace {

std::string value_text(const Scope &scope, const Moved &one) {
  switch (one.what) {
  case What::limit:
    return unit_mm(scope, tried_limit(one.length));
  case What::original:
    return unit_mm(scope, base::mm_exact(one.length, 1));
  case What::loss:
    return percent(scope, one.loss);
  case What::doubt:
    return base::to_text(one.doubt);
  }
  return {};
}

std::vector<const Moved *> moves_of(const InZone &zone, What what) {
  std::vector<const Moved *> out;
  for (const Moved &one : zone.moved)
    if (one.what == what)
      out.push_back(&one);
  return out;
}

std::string changed_words(const Scope &scope, What what, const std::string &verdict, const std::string &values) {
  const base::Fill to{"verdict", verdict}, at{"values", values};
  switch (what) {
  case What::limit:
    return scope.say_computed("robustness.changes-limit", {to, at});
  case What::loss:
    return scope.say_computed("robustness.changes-loss", {to, at});
  case What::original:
    return scope.say_computed("robustness.changes-original", {to, at});
  case What::doubt:
    return scope.say_computed("robustness.changes-doubt", {to, at});
  }
  return {};
}

std::string kept_words(const Scope &scope, What what, const std::string &low, const std::string &high) {
  const base::Fill from{"low", low}, to{"high", high};
  switch (what) {
  case What::limit:
    return scope.say_computed("robustness.keeps-limit", {from, to});
  case What::loss:
    return scope.say_computed("robustness.keeps-loss", {from, to});
  case What::original:
    return scope.say_computed("robustness.keeps-original", {from, to});
  case What::doubt:
    return scope.say_computed("robustness.keeps-doubt", {from, to});
  }
  return {};
}

constexpr What everything[] = {What::limit, What::loss, What::original, What::doubt};

/// "falls short at a limit of 4.0 mm": one part for each thing that moves it and each verdict it moves to.
std::vector<std::string> changes(const Scope &scope, const InZone &zone) {
  std::vector<std::string> parts;
  for (const What what : everything)
    for (const auto verdict : {assess::Verdict::meets, assess::Verdict::too_close, assess::Verdict::falls_short}) {
      std::vector<std::string> values;
      for (const Moved *one : moves_of(zone, what))
        if (one->verdict == verdict && verdict != zone.verdict)
          values.push_back(value_text(scope, *one));
      if (!values.empty())
        parts.push_back(changed_words(scope, what, verdict_word(scope, verdict), join_and(scope, values)));
    }
  return parts;
}

/// "every limit from 3.0 mm to 4.0 mm": one part for each thing that was moved and moves nothing.
std::vector<std::string> keeps(const Scope &scope, const InZone &zone) {
  std::vector<std::string> parts;
  for (const What what : everything) {
    const auto moves = moves_of(zone, what);
    const bool kept = std::ranges::all_of(moves, [&](const Moved *one) { return one->verdict == zone.verdict; });
    if (moves.size() > 1 && kept)
      parts.push_back(kept_words(scope, what, value_text(scope, *moves.front()), value_text(scope, *moves.back())));
  }
  return parts;
}

/// The ranges of the whole grid, as of things that were moved together.
std::string tried_words(const Scope &scope, const InZone &zone) {
  const auto &over = zone.over;
  std::vector<std::string> parts = {kept_words(scope, What::limit, unit_mm(scope, tried_limit(over.limits.front())),
                                               unit_mm(scope, tried_limit(over.limits.back()))),
                                    kept_words(scope, What::doubt, base::to_text(over.doubts.front()), base::to_text(over.doubts.back()))};
  if (!over.originals.empty())
    parts.push_back(scope.say_computed("robustness.keeps-share", {{"low", percent(scope, over.losses.front())},
                                                                  {"high", percent(scope, over.losses.back())},
                                                                  {"thin", base::mm_exact(over.originals.front(), 1)},
                                                                  {"thick", unit_mm(scope, base::mm_exact(over.originals.back(), 1))}}));
  return join_and(scope, parts);
}

/// In place of the grid: how many of its combinations give another verdict.
Sentence other_verdicts(const Scope &scope, const InZone &zone) {
  std::ptrdiff_t all = 0, others = 0;
  const auto differs = [&](const auto &one) { return one.tried.result.verdict != zone.verdict; };
  for (const auto &grid : zone.grids) {
    all += static_cast<std::ptrdiff_t>(grid.limits.size() + grid.losses.size());
    others += std::ranges::count_if(grid.limits, differs) + std::ranges::count_if(grid.losses, differs);
  }
  return scope.tell_computed("robustness.others", {{"some", plain(std::to_string(others))}, {"all", plain(std::to_string(all))}});
}

} // namespace

std::string tried_limit(Length limit) {
  const std::string exact = base::mm_exact(limit, 1), short_form = limit_text(limit);
  return exact.size() < short_form.size() ? exact : short_form;
}

bool all_alike(const InZone &zone) {
  const auto alike = [&](const auto &one) { return one.tried.result.verdict == zone.verdict; };
  return std::ranges::all_of(zone.grids, [&](const robustness::Grid &grid) {
    return std::ranges::all_of(grid.limits, alike) && std::ranges::all_of(grid.losses, alike);
  });
}

bool says_enough(const Judged &judged, const InZone &zone) {
  const bool turns = zone.flips.limit || zone.flips.original || zone.flips.doubt;
  return !turns && !judged.result.weak_basis && std::ranges::all_of(judged.result.subjects, [](const assess::Subject &subject) {
    return std::ranges::none_of(subject.results, [](const auto &result) {
      return result.verdict == assess::Verdict::too_close || result.verdict == assess::Verdict::falls_short;
    });
  });
}

Sentence robustness_sentence(const Scope &scope, const Judged &judged, const InZone &zone) {
  const InlineFill verdict{"verdict", plain(verdict_word(scope, zone.verdict))};
  if (all_alike(zone))
    return scope.tell_computed("robustness.alike", {verdict, {"tried", plain(tried_words(scope, zone))}});
  const InlineFill criterion{"criterion", plain(signed_name(scope, judged.result, zone.criterion))};
  const auto changed = changes(scope, zone), kept = keeps(scope, zone);
  const InlineFill stays{"kept", plain(join_and(scope, kept))}, moves{"changes", plain(base::joined(changed, scope.say("robustness.between")))};
  if (changed.empty()) {
    const auto holds = scope.tell_computed("robustness.holds", {criterion, verdict, stays});
    return says_enough(judged, zone) ? holds + other_verdicts(scope, zone) : holds;
  }
  if (kept.empty())
    return scope.tell_computed("robustness.moves", {criterion, verdict, moves});
  return scope.tell_computed("robustness.moves-and-holds", {criterion, verdict, moves, stays});
}

} // namespace strakebook::compose
