#include <catch2/catch.hpp>

#include "helpers.h"
#include "support/survey_builder.h"

using namespace strakebook;
using sample::contains;

namespace {

/// The sample with figures of floating: 18 x 2.08 x 0.9 = 33.696 m2 of waterplane, so that 33.696 kg sink her by a millimetre.
sample::Composed floating() {
  auto sample = sample::small_survey();
  auto &afloat = sample.survey.afloat;
  afloat.water.text = "fresh";
  afloat.waterplane_coefficient = base::parse_decimal("0.90");
  afloat.source.text = "a long swim at either end";
  afloat.freeboard = survey::LengthFact{.length = sample::station("0.40 m")};
  afloat.downflooding = survey::LengthFact{.length = sample::station("0.30 m")};
  afloat.opening.text = "the weed hatch";
  afloat.as.text = "tanks half full";
  assess_again(sample);
  return sample;
}

/// Puts weight on her, past the works.
void put(sample::Composed &sample, std::vector<works::Item> items) {
  works::Works works;
  works.items = std::move(items);
  sample.outlook.afloat = afloat::float_with(sample.survey, sample.assessment, sample.house.policy, works);
}

/// The figures set strong in the table.
std::vector<std::string> strong_cells(const sample::Composed &sample) {
  std::vector<std::string> out;
  for (const auto &section : compose::compose(sample.source()).sections)
    for (const auto &block : section.blocks)
      if (block.id == "table/afloat")
        for (const auto &row : std::get<content::Table>(block.what).groups[0].rows)
          for (const auto &cell : row.cells)
            for (const auto &part : cell.text)
              if (const auto *text = std::get_if<content::Text>(&part); text && text->emphasis == content::Emphasis::strong)
                out.push_back(text->text);
  return out;
}

std::string steelwork(const sample::Composed &sample) { return sample::section_text(compose::compose(sample.source()), "steelwork"); }

} // namespace

TEST_CASE("nothing is said of floating where nothing is given and nothing added") {
  const auto text = steelwork(sample::small_survey());
  CHECK_FALSE(contains(text, "stability"));
}

TEST_CASE("each item has its sinkage and heights, marked as no stability assessment") {
  auto sample = floating();
  put(sample, {{.id = "S1", .adds_steel = true, .net_kg = 336.96, .centre = sample::station("4 m").value},
               {.id = "S2", .adds_steel = true, .net_kg = 673.92, .centre = sample::station("14 m").value}});
  const auto text = steelwork(sample);
  INFO(text);
  CHECK(contains(text, "Not a stability assessment."));
  CHECK(contains(text, "as found\n\n\n400\n300\n"));
  // 12 x 336.96 x 5 / (2.08 x 18 x 18) = 30 mm
  CHECK(contains(text, "S1\n337\n10.0\n390\n290\n30 mm by the bow\n"));
  CHECK(contains(text, "S2\n674\n20.0\n370\n270\n60 mm by the stern\n"));
  CHECK(contains(text, "all together\n1011\n30.0\n370\n270\n30 mm by the stern\n"));
  CHECK(contains(text, "Reckoned by length over all 18.0 m, no waterline length being given, beam 2.08 m and a waterplane coefficient of "
                       "0.90 (a long swim at either end): 33.7 m² of waterplane, in fresh water of 1.000 t/m³. 0.34 t sink her by 1 cm."));
  CHECK(contains(text, "As found (tanks half full): freeboard 0.40 m"));
  CHECK(contains(text, "lowest opening (the weed hatch) 0.30 m"));
  CHECK(contains(text, "Strong: less than 250 mm of freeboard, or 250 mm at the lowest opening, which this house asks after"));
}

TEST_CASE("heights under what the house asks after are set strong, and none is printed higher than it is") {
  auto sample = floating();
  put(sample, {{.id = "S1", .adds_steel = true, .net_kg = 33.696 * 50.04}});
  const auto text = steelwork(sample);
  INFO(text);
  CHECK(contains(text, "S1\n1686\n50.0\n349\n249\n–\n"));
  CHECK(strong_cells(sample) == std::vector<std::string>{"249"});
}

TEST_CASE("each way to cover an area stands under the schedule, from how she was found") {
  auto sample = floating();
  const base::Length middle = sample::station("9 m").value;
  works::Works works;
  works.items = {{.id = "S1", .adds_steel = true, .net_kg = 336.96, .centre = middle}};
  works.options = {{.area = "A1", .kind = works::Option::Kind::insert, .net_kg = 33.696, .centre = middle},
                   {.area = "A1", .kind = works::Option::Kind::overplate, .net_kg = 168.48, .centre = middle}};
  sample.outlook.works.options = works.options;
  sample.outlook.afloat = afloat::float_with(sample.survey, sample.assessment, sample.house.policy, works);
  const auto text = steelwork(sample);
  INFO(text);
  CHECK(contains(text, "S1\n337\n10.0\n390\n290\nlevel\nWays to cover an area, each by itself, then every area in one way; without laps\nA1, insert\n34\n1.0\n399\n299\nlevel\n"
                       "A1, overplate\n168\n5.0\n395\n295\nlevel\n"));
}

TEST_CASE("what is missing beside steel added is named in words") {
  auto sample = sample::small_survey();
  put(sample, {{.id = "S1", .adds_steel = true, .net_kg = 100}, {.id = "S2", .adds_steel = true}});
  const auto text = steelwork(sample);
  INFO(text);
  CHECK(contains(text, "Not given, and so what turns on it is not reckoned: the water she floats in, the coefficient of her waterplane, the "
                       "freeboard as found and the height of the lowest opening as found."));
  CHECK(contains(text, "The weight of S2 is not in these figures"));
}

TEST_CASE("figures as found stand by themselves where no steel is added") {
  auto sample = floating();
  sample.survey.steelwork.clear();
  put(sample, {});
  const auto text = steelwork(sample);
  CHECK(contains(text, "No steelwork is scheduled."));
  CHECK(contains(text, "As found (tanks half full): freeboard 0.40 m"));
  CHECK(contains(text, "Not a stability assessment."));
}
