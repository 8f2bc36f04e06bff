#include <catch2/catch.hpp>

#include "helpers.h"
#include "support/survey_builder.h"

// Weights: 7.85 kg per m2 and mm (plate tables), worked by hand. Layout and wording: our own.
using namespace strakebook;
using sample::contains;

namespace {

/// A plate of 1200 by 500 by 5 over PW 2 to 4.
survey::SteelworkItem plate(const std::string &action = "overplate") {
  survey::SteelworkItem item{.id = "S2", .recommendation = "1", .action = action,
                             .at = {.rows = {"PW"}, .from = sample::station("2"), .to = sample::station("4")}};
  item.length = sample::mm("1200 mm");
  item.breadth = sample::mm("500 mm");
  item.thickness = sample::mm("5 mm");
  item.radius = sample::mm("75 mm");
  item.lap_width = sample::mm("40 mm");
  item.plug_pitch = sample::mm("300 mm");
  item.hold_point = {.text = "before the plate is closed"};
  return item;
}

sample::Composed with_plate(const survey::SteelworkItem &item) {
  auto sample = sample::small_survey();
  sample.survey.steelwork.push_back(item);
  assess_again(sample);
  return sample;
}

/// The mark SW 1 thin, on a row that stands for 300 mm.
sample::Composed with_area() {
  auto sample = sample::small_survey();
  for (auto &mark : sample.survey.marks)
    if (mark.id() == "SW 1")
      mark.repeats = {sample::mm("3.0")};
  for (auto &row : sample.survey.rows)
    row.stands_for = sample::mm("300 mm");
  assess_again(sample);
  return sample;
}

std::string section(const sample::Composed &sample, const std::string &id = "steelwork") {
  return sample::section_text(compose::compose(sample.source()), id);
}

const content::Figure *figure(const content::Document &document, const std::string &id) {
  for (const auto &part : document.sections)
    for (const auto &block : part.blocks)
      if (block.id == id)
        return std::get_if<content::Figure>(&block.what);
  return nullptr;
}

template <class E> int count(const content::Drawing &drawing, const std::string &meaning) {
  int n = 0;
  for (const auto &element : drawing.elements)
    if (const auto *one = std::get_if<E>(&element); one != nullptr && one->meaning == meaning)
      ++n;
  return n;
}

} // namespace

TEST_CASE("the schedule gives size, weight, weld and plugs of a plate, and its hold point in strong") {
  const auto text = section(with_plate(plate()));
  INFO(text);
  CHECK(contains(text, "size 1200 mm × 500 mm"));
  CHECK(contains(text, "corners radius 75 mm"));
  CHECK(contains(text, "lap 40 mm"));
  CHECK(contains(text, "5 mm/0.60 m²/23.4 kg"));
  CHECK(contains(text, "3.27 m round its edge"));
  CHECK(contains(text, "plug welds 3 along, 1 across: 3, on 300 mm"));
  CHECK(contains(text, "Hold: before the plate is closed"));
  CHECK(contains(text, "Steel added by S2: 23 kg."));
}

TEST_CASE("the schedule gives what is let in, what comes off and what that adds") {
  // PW 2 and PW 3 were read: 5.7 and 5.6
  const auto text = section(with_plate(plate("insert")));
  INFO(text);
  CHECK(contains(text, "23.4 kg in, 26.4 kg out: \u22123.0 kg"));
  CHECK(contains(text, "Steel added by S2: \u22123 kg."));
}

TEST_CASE("a plate that cannot be weighed is said to be so") {
  auto item = plate();
  item.breadth.reset();
  const auto text = section(with_plate(item));
  CHECK(contains(text, "S2 could not be weighed"));
  CHECK_FALSE(contains(text, "Steel added"));
  CHECK(figure(compose::compose(with_plate(item).source()), "figure/plates") == nullptr);
}

TEST_CASE("the nearest frame stands beside a place where frames are known") {
  auto sample = with_plate(plate());
  CHECK_FALSE(contains(section(sample), "at frame 6"));
  sample.survey.datum.frame_zero = sample::station("0 m");
  sample.survey.datum.frames_run = {.text = "with stations"};
  assess_again(sample);
  CHECK(contains(section(sample), "PW 2–4/middle at frame 6/"));
  CHECK(contains(section(sample), "PW 3.4/frame 7, 100 mm forward of it/nearest frame frame 7"));
  CHECK(contains(section(sample, "datum"), "frame 0 at\n0 m\nframes numbered\nwith stations\n"));
  sample.survey.datum.towards.text = "forward, towards the stem";
  assess_again(sample);
  CHECK(contains(section(sample), "frame 7, 100 mm aft of it"));
}

TEST_CASE("a plate is sketched to a stated scale, with its lap, plugs, stations and frames") {
  auto sample = with_plate(plate());
  sample.survey.datum.frame_zero = sample::station("0 m");
  sample.survey.datum.frames_run = {.text = "with stations"};
  assess_again(sample);
  const auto document = compose::compose(sample.source());
  const auto *found = figure(document, "figure/plates");
  REQUIRE(found != nullptr);
  REQUIRE(found->panels.size() == 1);
  const auto &panel = found->panels[0];
  CHECK(sample::text_of(panel.title) == "S2  overplate (doubler), 5.0 mm");
  CHECK(sample::text_of(panel.title_right) == "1:25");
  CHECK(contains(sample::text_of(found->caption), "Broken line"));
  CHECK(panel.drawing.x0 == Approx(2.4));
  CHECK(panel.drawing.x1 == Approx(3.6));
  CHECK(panel.drawing.y1 == Approx(0.5));
  CHECK(count<content::Outline>(panel.drawing, "doubler") == 1);
  CHECK(count<content::Outline>(panel.drawing, "lap-edge") == 1);
  CHECK(count<content::Outline>(panel.drawing, "frame-line") == 3); // frames 5, 6 and 7
  CHECK(count<content::Spot>(panel.drawing, "plug") == 3);
  CHECK(contains(panel.drawing.spoken, "S2: overplate (doubler), 5.0\u00A0mm, 1200 by 500 mm"));
}

TEST_CASE("the scale is the plate's own: a long one takes the width of the page") {
  auto item = plate("insert");
  item.length = sample::mm("9 m");
  item.at.to = sample::station("11");
  const auto document = compose::compose(with_plate(item).source());
  CHECK(figure(document, "figure/plates") == nullptr);
  const auto *found = figure(document, "figure/long-plates");
  REQUIRE(found != nullptr);
  CHECK(sample::text_of(found->panels[0].title_right) == "1:75");
  CHECK(count<content::Outline>(found->panels[0].drawing, "insert") == 1);
  CHECK(count<content::Spot>(found->panels[0].drawing, "plug") == 0);
}

TEST_CASE("places that fall short are gathered, with what covers them and what covering them would weigh") {
  auto sample = with_area();
  auto text = section(sample);
  INFO(text);
  // from the first mark of the row to half-way between SW 1 and SW 4, over a doubler that hides SW 2
  CHECK(contains(text, "A1\nSW 1–2.5\n1.50 × 0.30\n0.45\n1, 1 not seen\n3.0 at SW 1\n"));
  CHECK(contains(text, "nothing\n"));
  CHECK(contains(text, "A1\n6.0\noriginal\n0.45\n21.2\n10.6\n10.6\n21.2\n"));
  sample.survey.recommendations[0].at = {.rows = {"SW"}, .from = sample::station("1"), .to = sample::station("2")};
  sample.survey.steelwork[0].at = sample.survey.recommendations[0].at;
  assess_again(sample);
  CHECK(contains(section(sample), "S1, item 1\n"));
}

TEST_CASE("where every place meets its limit, that is said and no table stands") {
  const auto text = section(sample::small_survey());
  CHECK(contains(text, "No place falls short of the limit of its zone, and none is too close to it to call."));
  CHECK_FALSE(contains(text, "Places that do not meet"));
}

TEST_CASE("what the schedule is looked over by stands among the rules, where there is a schedule") {
  auto sample = sample::small_survey();
  CHECK(contains(section(sample, "appendices"), "lap 25 to 50 mm, on to plate of 4 mm or more"));
  sample.survey.steelwork.clear();
  assess_again(sample);
  CHECK_FALSE(contains(section(sample, "appendices"), "lap 25 to 50 mm"));
}

TEST_CASE("what rows stand for, and the form of a bilge, are printed where they are written") {
  auto sample = with_area();
  CHECK(contains(section(sample, "datum"), "stands for"));
  CHECK_FALSE(contains(section(sample::small_survey(), "datum"), "stands for"));
  sample.survey.zones[0].bilge = {.text = "hard chine"};
  assess_again(sample);
  CHECK(contains(section(sample, "original"), "hard chine bilge"));
}
