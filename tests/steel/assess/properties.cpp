#include <catch2/catch.hpp>

#include <algorithm>

#include <nlohmann/json.hpp>

#include "steel/assess/assessed.h"
#include "steel/assess/generated.h"
#include "strakebook/steel/survey/reader.h"
#include "support/temp_folder.h"

// What holds of every assessment, tried on generated surveys: no figure here comes from outside.
using namespace strakebook;
using assess::Assessment;
using assess::Length;
using assess::Verdict;
using Json = nlohmann::json;

namespace {

constexpr int rounds = 400, rounds_of_whole = 100; // the whole assessment as JSON takes longer to compare

int rank(Verdict verdict) { return verdict == Verdict::meets ? 2 : verdict == Verdict::too_close ? 1 : 0; }

int rung_index(const std::string &rung) {
  const auto &rungs = sample::house().ladder.rungs;
  return static_cast<int>(std::ranges::find(rungs, rung, &policy::Rung::id) - rungs.begin());
}

bool loses_less(const std::optional<assess::Wastage> &now, const std::optional<assess::Wastage> &before) {
  return now && before && now->share && before->share && now->share->nominal < before->share->nominal;
}

/// Verdicts of a zone, place by place and criterion by criterion, that got better.
int better_verdicts(const assess::ZoneResult &now, const assess::ZoneResult &before) {
  int better = 0;
  for (std::size_t i = 0; i < before.subjects.size(); ++i)
    for (std::size_t k = 0; k < before.subjects[i].results.size(); ++k)
      better += rank(now.subjects[i].results[k].verdict) > rank(before.subjects[i].results[k].verdict);
  return better;
}

/// Thinner by up to 0.9 mm, and by one nanometre at the least.
Length thinner(Length figure, sample::Generator &generator) {
  return figure - Length::nanometres(1 + generator.below(900'000));
}

/// The assessment as JSON, its lists of places in the order of their names.
Json in_one_order(const survey::Survey &survey) {
  auto all = Json(assess::json(survey, sample::assessed(survey)));
  constexpr std::pair<const char *, const char *> lists[] = {
      {"zones", "zone"}, {"rows", "row"}, {"marks", "mark"}, {"pits", "pit"}, {"defaults", "pit"}, {"gauges", "gauge"}, {"retakes", "place"}};
  for (const auto &[list, name] : lists)
    std::sort(all[list].begin(), all[list].end(), [&, key = name](const Json &a, const Json &b) {
      return std::pair(a[key].dump(), a.dump()) < std::pair(b[key].dump(), b.dump());
    });
  return all;
}

} // namespace

// A zone is judged at its lowest place with that place's own doubt. Where the gauges of a zone differ in doubt, another place that
// a better gauge found short may cease to be the lowest; so the zones here have one gauge, and the next property looks at places.
TEST_CASE("the original held, a thinner reading improves no verdict, no rung and no loss") {
  sample::Generator generator(20261014);
  int tried = 0, wrong = 0;
  for (int round = 0; round < rounds; ++round) {
    auto survey = generator.survey(1);
    const auto before = sample::assessed(survey);
    for (int times = generator.below(3); times >= 0; --times) {
      if (survey.pits.empty() || generator.below(3) > 0) {
        auto &mark = survey.marks[static_cast<std::size_t>(generator.below(static_cast<int>(survey.marks.size())))];
        for (auto &repeat : mark.repeats) repeat.value = thinner(repeat.value, generator);
      } else {
        auto &pit = survey.pits[static_cast<std::size_t>(generator.below(static_cast<int>(survey.pits.size())))];
        pit.adjacent.value = thinner(pit.adjacent.value, generator);
      }
    }
    const auto after = sample::assessed(survey);
    for (std::size_t i = 0; i < before.zones.size(); ++i) {
      const auto &was = before.zones[i], &now = after.zones[i];
      ++tried;
      wrong += better_verdicts(now, was);
      wrong += loses_less(now.general, was.general) || loses_less(now.local, was.local) || loses_less(now.under_pit, was.under_pit);
      wrong += !was.rung.empty() && rung_index(now.rung) > rung_index(was.rung);
    }
    wrong += after.worst_remaining > before.worst_remaining;
  }
  CHECK(tried == 3 * rounds);
  CHECK(wrong == 0);
}

TEST_CASE("a thinner place never stands better, whatever gauge read it") {
  sample::Generator generator(7);
  int tried = 0, wrong = 0;
  for (int round = 0; round < rounds; ++round) {
    auto survey = generator.survey(2);
    const auto before = sample::assessed(survey);
    const auto at = static_cast<std::size_t>(generator.below(static_cast<int>(survey.marks.size())));
    if (!before.marks[at].standing || !before.marks[at].standing->result.governs) continue; // the limit must be held too
    for (auto &repeat : survey.marks[at].repeats) repeat.value = thinner(repeat.value, generator);
    const auto after = sample::assessed(survey);
    ++tried;
    wrong += rank(after.marks[at].standing->result.verdict) > rank(before.marks[at].standing->result.verdict);
  }
  CHECK(tried > rounds / 4);
  CHECK(wrong == 0);
}

TEST_CASE("a wider doubt never turns too close into meets, nor any other verdict but into too close") {
  sample::Generator generator(3);
  int tried = 0, wrong = 0;
  const auto compare = [&](const assess::CriterionResult &before, const assess::CriterionResult &after) {
    ++tried;
    wrong += after.verdict != before.verdict && after.verdict != Verdict::too_close;
  };
  for (int round = 0; round < rounds; ++round) {
    auto survey = generator.survey(1); // with two gauges a wider one may become the worst of equals: another place
    const auto before = sample::assessed(survey);
    auto &gauge = survey.gauges[static_cast<std::size_t>(generator.below(2))];
    gauge.u = *gauge.u + Length::nanometres(1 + generator.below(150'000));
    const auto after = sample::assessed(survey);
    for (std::size_t i = 0; i < before.zones.size(); ++i)
      for (std::size_t k = 0; k < before.zones[i].subjects.size(); ++k) {
        if (before.zones[i].subjects[k].id != after.zones[i].subjects[k].id) continue;
        for (std::size_t c = 0; c < before.criteria.size(); ++c)
          compare(before.zones[i].subjects[k].results[c], after.zones[i].subjects[k].results[c]);
      }
    for (std::size_t i = 0; i < before.marks.size(); ++i)
      if (before.marks[i].standing) compare(before.marks[i].standing->result, after.marks[i].standing->result);
  }
  CHECK(tried > 100 * rounds / 10);
  CHECK(wrong == 0);
}

TEST_CASE("the order of zones, rows, marks, pits and gauges never matters") {
  sample::Generator generator(11);
  int differs = 0;
  for (int round = 0; round < rounds_of_whole; ++round) {
    auto survey = generator.survey(2);
    const auto before = in_one_order(survey);
    generator.shuffle(survey.zones);
    generator.shuffle(survey.rows);
    generator.shuffle(survey.marks);
    generator.shuffle(survey.pits);
    generator.shuffle(survey.gauges);
    generator.shuffle(survey.decisions);
    differs += in_one_order(survey) != before;
  }
  CHECK(differs == 0);
}

TEST_CASE("a mark that was not read changes no verdict") {
  sample::Generator generator(5);
  int differs = 0;
  for (int round = 0; round < rounds_of_whole; ++round) {
    auto survey = generator.survey(2);
    const auto before = Json(assess::json(survey, sample::assessed(survey)));
    const auto &row = survey.rows[static_cast<std::size_t>(generator.below(static_cast<int>(survey.rows.size())))];
    survey.marks.push_back({.row = row.id, .station = sample::station("17"), .status = survey::Status::no_access, .gauge = "poor"});
    const auto after = Json(assess::json(survey, sample::assessed(survey)));
    for (std::size_t i = 0; i < before["zones"].size(); ++i)
      for (const char *same : {"subjects", "general", "local", "under_pit", "conflict", "conflict_at", "measured_by", "worst", "mean"})
        differs += before["zones"][i][same] != after["zones"][i][same];
    differs += before["worst"] != after["worst"];
  }
  CHECK(differs == 0);
}

TEST_CASE("the order of the lines of a readings file, and of the maps of a survey, never matters") {
  const auto assessed = [](const std::string &rows, const std::string &lines) {
    const support::TempFolder folder;
    folder.write("hull.csv", "station m, PW, SW\n" + lines);
    const auto file = folder.write("survey.yaml", R"(strakebook: 1
house: base
report: {number: T 1, issue: 1, state: draft}
vessel: {source: measured, name: Reed Warbler, length: 18.0 m, beam: 2.08 m}
datum: {from: fore face of stem, towards: aft, station-unit: m}
gauges: {ut: {u: 0.10}}
zones:
  W: {name: wind-and-water, plating: side, original: 5.0, basis: mill certificate, source: "document, drawing 3"}
criteria: {absolute-4.0: {}, percent-20: {}}
readings: {file: hull.csv, form: grid, separator: comma, unit: mm, stations: 3, marks: 6, surface: bare, gauge: ut, reduce: least of repeats}
rows:
)" + rows);
    base::Diagnostics sink;
    const auto survey = survey::read_survey(file, sample::house(), sink);
    INFO(base::terminal_text(sink));
    REQUIRE(sink.ok());
    return in_one_order(survey);
  };
  const std::string port = "  PW: {zone: W, side: port, name: wind-and-water}\n",
                    starboard = "  SW: {zone: W, side: starboard, name: wind-and-water}\n";
  const auto one = assessed(port + starboard, "1, 4.6, 4.2\n2, 4.2, no-echo\n3, 4.4, 4.3\n");
  CHECK(one["worst"] == "PW 2"); // of two equals the one whose row comes first by name
  CHECK(assessed(starboard + port, "3, 4.4, 4.3\n1, 4.6, 4.2\n2, 4.2, no-echo\n") == one);
}
