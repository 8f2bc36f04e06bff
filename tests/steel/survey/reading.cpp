#include <algorithm>

#include <catch2/catch.hpp>

#include "helpers.h"

using namespace strakebook;
using namespace strakebook::survey;
using namespace strakebook::survey::testing;

namespace {

Survey sound(const std::filesystem::path &file) {
  auto one = run(file);
  INFO(base::terminal_text(one.found));
  REQUIRE(one.found.ok());
  return std::move(one.survey);
}

} // namespace

TEST_CASE("the survey with every key is read as it stands") {
  const auto survey = sound(here / "whole/survey.yaml");
  CHECK(run(here / "whole/survey.yaml").found.all().empty());

  CHECK(survey.report.state == State::final);
  CHECK(survey.report.issued->value == base::Date{2026, 10, 20});
  CHECK(survey.vessel.length.length.value == base::Length::millimetres(18'000));
  CHECK(survey.vessel.length.length.raw == "18.0 m");
  CHECK(survey.vessel.length.from.origin == base::Origin::measured);
  CHECK(survey.vessel.beam.from.origin == base::Origin::told); // from the vessel's own source
  CHECK(survey.vessel.beam.from.by == "owner");
  CHECK(survey.vessel.ids.at(1).from.by == "builder's invoice 14");
  CHECK(survey.conditions.cleaned->value);
  CHECK(survey.zones.at(0).original.nominal.raw == "6.0");
  CHECK(survey.zones.at(0).original.tolerances == std::vector<std::string>{"EN 10029:1991 A", "EN 10051"});
  CHECK(survey.zones.at(0).pitting->share_percent == base::Decimal{5, 1});
  CHECK(survey.zones.at(0).pitting->spacing->value == base::Length::millimetres(400));
  CHECK(survey.decisions.at(0).facts.at(2).kind == StatementKind::told);
  CHECK(survey.decisions.at(0).instead_of.at(1).name == "insert");
  CHECK(survey.decisions.at(0).why.text.ends_with("and is active."));
  CHECK(survey.own_criteria.at(0).limit == base::Length::millimetres(5));
  CHECK(survey.acknowledgements.at(0).subject == "neighbour-jump BC 7");
  CHECK(survey.pits.at(0).photos == std::vector<std::string>{"1"});
  CHECK(survey.gauges.at(0).u == base::Length::micrometres(100));
  CHECK(velocity_set(survey.gauges.at(0)) == base::Decimal{5920, 0});
  CHECK_FALSE(survey.gauges.at(1).u);
  REQUIRE(survey.gauges.at(1).doubt.size() == 3);
  CHECK(survey.gauges.at(1).doubt.at(1).id == "repeatability");
  CHECK(survey.gauges.at(1).doubt.at(1).degrees == base::Decimal{9, 0});
}

TEST_CASE("marks stand row by row with the digits that were written") {
  const auto survey = sound(here / "whole/survey.yaml");
  REQUIRE(survey.marks.size() == 21); // 19 in the file, 2 in the survey
  std::vector<std::string> ids;
  for (const auto &mark : survey.marks)
    ids.push_back(mark.id());
  CHECK(ids.front() == "PW 1");
  CHECK(ids.at(7) == "SW 1");
  CHECK(ids.at(14) == "BC 2"); // none planned at BC 1
  CHECK(ids.back() == "BC 8");

  const auto &first = survey.marks.front();
  CHECK(first.repeats.at(2).raw == "5.9");
  CHECK(first.repeats.at(2).value == base::Length::micrometres(5900));
  CHECK(first.surface == Surface::coated_echo_to_echo);
  CHECK(mark_of(survey, "PW 4")->status == Status::no_echo);
  CHECK(mark_of(survey, "PW 4")->repeats.empty());
  CHECK(mark_of(survey, "SW 5")->status == Status::rejected);
  CHECK(mark_of(survey, "SW 5")->repeats.size() == 2);
  CHECK(mark_of(survey, "SW 5")->why.text == "the probe rocked on a weld bead");
  CHECK(mark_of(survey, "SW 5")->span.line == 7);
  CHECK(mark_of(survey, "SW 5")->span.column == 25);
  CHECK(mark_of(survey, "BC 1") == nullptr);
  const auto *queried = mark_of(survey, "PW 7");
  CHECK(queried->status == Status::queried);
  CHECK(queried->repeats.at(0).raw == "5.9?");
  CHECK(queried->repeats.at(0).value == base::Length::micrometres(5900));
  CHECK(queried->why.text.starts_with("thicker than its neighbours"));
  CHECK(survey.doublers.at(0).from_inside->reading.raw == "5.2");

  CHECK(first.reduce == Reduction::least_of_repeats);
  CHECK(mark_of(survey, "BC 7")->reduce == Reduction::mean_of_repeats);
  CHECK(mark_of(survey, "BC 7")->coating->value == base::Length::micrometres(250));
  const auto doublers = std::count_if(survey.marks.begin(), survey.marks.end(),
                                      [](const Mark &mark) { return mark.plate == Plate::doubler; });
  CHECK(doublers == 2); // D1 lies over SW 2 to 3, its ends among it
  CHECK(mark_of(survey, "SW 3")->plate == Plate::doubler);
  CHECK(mark_of(survey, "SW 4")->plate == Plate::hull);
}

TEST_CASE("every input is recorded with its digest and what was read from it") {
  const auto survey = sound(here / "whole/survey.yaml");
  REQUIRE(survey.inputs.size() == 3); // the third is an earlier survey's
  CHECK(survey.inputs.at(0).kind == "survey");
  CHECK(survey.inputs.at(0).marks == 2);
  CHECK(survey.inputs.at(1).path == "readings/hull.csv");
  CHECK(survey.inputs.at(1).lines == 7);
  CHECK(survey.inputs.at(1).marks == 19);
  CHECK(survey.inputs.at(1).bytes == std::filesystem::file_size(here / "whole/readings/hull.csv"));
  CHECK(survey.inputs.at(1).digest.size() == 64);
}

// International inch of 1959: 25.4 mm exactly.
TEST_CASE("inches and their fractions are exact, with the raw text kept") {
  Folder folder;
  const auto survey = sound(folder.write(
      "survey.yaml",
      small_survey(inline_readings("{PW: {3: 5/16 0.187, 4: 60 thou 3/16 in 4.6 mm}}", 2, "in"))));
  const auto &three = survey.marks.at(0).repeats;
  CHECK(three.at(0).value == base::Length::nanometres(7'937'500));
  CHECK(three.at(0).raw == "5/16");
  CHECK(three.at(1).value == base::Length::nanometres(4'749'800));
  const auto &four = survey.marks.at(1).repeats;
  REQUIRE(four.size() == 3);
  CHECK(four.at(0).value == base::Length::nanometres(1'524'000));
  CHECK(four.at(0).unit == base::Unit::thou);
  CHECK(four.at(1).value == base::Length::nanometres(4'762'500));
  CHECK(four.at(1).raw == "3/16 in");
  CHECK(four.at(2).value == base::Length::micrometres(4600));
}

TEST_CASE("notebook inches, mixed numbers and a queried figure keep their raw text beside the exact value") {
  Folder folder;
  const auto survey = sound(folder.write(
      "survey.yaml",
      small_survey(R"(readings: {inline: {PW: {3: .187 .188, 4: "5/16?", 5: 1 1/4 in, 6: "7/32? 0.22? in"}}, unit: in, marks: 4,
  surface: bare, gauge: ut, reduce: least of repeats, queried: {PW 4: a misread or a doubler, PW 6: smudged}}
)")));
  const auto &all = survey.marks;
  REQUIRE(all.size() == 4);
  CHECK(all[0].repeats.at(0).raw == ".187");
  CHECK(all[0].repeats.at(1).value == base::Length::nanometres(4'775'200));
  CHECK(all[1].status == Status::queried);
  CHECK(all[1].repeats.at(0).raw == "5/16?");
  CHECK(all[1].repeats.at(0).value == base::Length::nanometres(7'937'500));
  CHECK(all[1].why.text == "a misread or a doubler");
  CHECK(all[2].repeats.at(0).value == base::Length::nanometres(31'750'000));
  CHECK(all[3].repeats.at(1).raw == "0.22? in");
}

TEST_CASE("stations in feet and inches are places in all of the file") {
  Folder folder;
  auto text = small_survey(inline_readings("{PW: {12 ft 6 in: 4.6, 13: 4.7, 14'3\": 4.6}}", 3),
                           "notes:\n  N1: {kind: seen, at: PW 12 ft 6 in to 14, text: \"As PW 12 ft 6 in, PW 13 and PW 14'3\\\".\"}\n"
                           "photos:\n  1: {at: PW 12 ft 6 in}\nnone-found: [{what: pits, at: PW 14'3\", how: see photo 1}]\n");
  text.replace(text.find("station-unit: m}"), 16, "station-unit: ft}");
  const auto file = folder.write("survey.yaml", text);
  const auto survey = sound(file);
  CHECK(run(file).found.all().empty());
  CHECK(survey.marks.at(0).id() == "PW 12 ft 6 in");
  CHECK(survey.marks.at(0).station.value == base::Length::nanometres(3'810'000'000));
  CHECK(survey.notes.at(0).at.from->value == base::Length::nanometres(3'810'000'000));
  CHECK(survey.notes.at(0).at.to->raw == "14");
}

TEST_CASE("stations in feet are places in feet") {
  Folder folder;
  auto text = small_survey(inline_readings("{PW: {10: 4.6}}", 1));
  text.replace(text.find("station-unit: m}"), 16, "station-unit: ft}");
  CHECK(sound(folder.write("survey.yaml", text)).marks.at(0).station.value ==
        base::Length::nanometres(3'048'000'000));
}

TEST_CASE("the thickest reading that a plate can have is read, one nanometre more is not") {
  Folder folder;
  CHECK(run(folder.write("a.yaml", small_survey(inline_readings("{PW: {3: 60}}", 1)))).found.ok());
  const auto over =
      run(folder.write("b.yaml", small_survey(inline_readings("{PW: {3: 60.000001}}", 1)))).found;
  REQUIRE(over.errors() == 1);
  CHECK(over.all().front().code == base::Code::reading_implausible);
}

TEST_CASE("a long file gives surface, plate and remark mark by mark") {
  Folder folder;
  folder.write("readings/log.csv", "row\tstation m\treading mm\tsurface\tplate\tremark\n"
                                   "SW\t4.5\t4.6 4.7\tcoated single-echo\tdoubler\t\n"
                                   "PW\t3\tno-access\tbare\thull\tfender\n");
  const auto survey = sound(folder.write("survey.yaml", small_survey(R"(readings:
  - {file: readings/log.csv, form: long, separator: tab, unit: mm, lines: 2, marks: 2, surface: bare, gauge: ut, reduce: least of repeats}
)")));
  REQUIRE(survey.marks.size() == 2);
  CHECK(survey.marks.at(0).id() == "PW 3");
  CHECK(survey.marks.at(0).status == Status::no_access);
  CHECK(survey.marks.at(0).why.text == "fender");
  CHECK(survey.marks.at(1).surface == Surface::coated_single_echo);
  CHECK(survey.marks.at(1).plate == Plate::doubler);
}

TEST_CASE("a pit closes exactly: a hole is a pit, more than a hole is not") {
  Folder folder;
  const auto pit = [&](const std::string &figures) {
    return run(folder.write("survey.yaml", small_survey(inline_readings("{PW: {5: 4.6}}", 1),
                                                        "pits:\n  P1: {at: PW 5, " + figures + "}\n")))
        .found;
  };
  CHECK(pit("adjacent: 4.6, depth: 1.3, remaining: 3.3").ok());
  CHECK(pit("adjacent: 4.6, depth: 1.3, remaining: 3.30").ok()); // the same length
  CHECK_FALSE(pit("adjacent: 4.6, depth: 1.3, remaining: 3.31").ok());
  CHECK(pit("adjacent: 4.6, depth: 4.6").ok());
  CHECK_FALSE(pit("adjacent: 4.6, depth: 4.61").ok());
  CHECK(pit("adjacent: 6.35, depth: 60 thou, remaining: 4.826").ok()); // 60 thou = 1.524 mm
}

TEST_CASE("a mark may end a file only with its line: a cut anywhere is seen") {
  Folder folder;
  const std::string whole = "station m, PW, SW\n1, 4.6, 4.7\n2, 4.6, 4.7\n";
  const auto file = folder.write("survey.yaml", small_survey(R"(readings:
  {file: hull.csv, form: grid, separator: comma, unit: mm, stations: 2, marks: 4, surface: bare, gauge: ut, reduce: least of repeats}
)"));
  for (std::size_t kept = 0; kept <= whole.size(); ++kept) {
    folder.write("hull.csv", whole.substr(0, kept));
    INFO("kept " << kept << " of " << whole.size());
    CHECK(run(file).found.ok() == (kept == whole.size()));
  }
}

TEST_CASE("every mark of a wide grid is read, two repeats each") {
  Folder folder;
  std::string rows, head = "station m";
  for (char strake = 'A'; strake < 'A' + 24; ++strake) {
    rows += fmt::format("  R{}: {{zone: W, side: port, name: strake}}\n", strake);
    head += fmt::format(",R{}", strake);
  }
  std::string grid = head + "\n";
  for (int bay = 1; bay <= 50; ++bay) {
    grid += fmt::format("{}", bay);
    for (int strake = 0; strake < 24; ++strake)
      grid += ",4.6 4.7";
    grid += "\n";
  }
  folder.write("hull.csv", grid);
  const auto file = folder.write("survey.yaml", small_survey(rows + R"(readings:
  {file: hull.csv, form: grid, separator: comma, unit: mm, stations: 50, marks: 1200, surface: bare, gauge: ut, reduce: least of repeats}
)"));
  const auto survey = sound(file);
  CHECK(survey.marks.size() == 1200); // 2,400 readings
}
