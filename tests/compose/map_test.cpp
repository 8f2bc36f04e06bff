#include <catch2/catch.hpp>

#include <algorithm>

#include "helpers.h"
#include "strakebook/compose/map_parts.h"

// What the shell expansion shows, and that it tells it to those who cannot see it.

using namespace strakebook;
using content::Label;
using sample::contains;

namespace {

const content::Figure *figure(const content::Document &document, const std::string &id) {
  for (const auto &section : document.sections)
    for (const auto &block : section.blocks)
      if (block.id == id) return &std::get<content::Figure>(block.what);
  return nullptr;
}

std::vector<Label> labels(const content::Drawing &drawing) {
  std::vector<Label> out;
  for (const auto &element : drawing.elements)
    if (const auto *label = std::get_if<Label>(&element)) out.push_back(*label);
  return out;
}

std::size_t leading_to(const std::vector<Label> &all, const std::string &target) {
  return static_cast<std::size_t>(std::ranges::count(all, target, &Label::target));
}

} // namespace

TEST_CASE("the map has every mark that was used, the lowest of each row said first and strong") {
  const auto sample = sample::small_survey();
  const auto document = compose::compose(sample.source());
  const auto *map = figure(document, "figure/map");
  REQUIRE(map != nullptr);
  const auto all = labels(map->panels.at(0).drawing);
  for (const auto &result : sample.assessment.marks) {
    const auto &mark = sample.survey.marks[result.mark];
    INFO(mark.id());
    CHECK(leading_to(all, "mark/" + mark.id()) == (result.used ? 1 : 0));
  }
  for (const auto &row : sample.assessment.rows) {
    if (row.worst.empty()) continue;
    const auto first = std::ranges::find_if(all, [&](const Label &label) { return label.target.starts_with("mark/" + row.row + " "); });
    REQUIRE(first != all.end());
    CHECK(std::get<content::Text>(first->text.at(0)).emphasis == content::Emphasis::strong);
    CHECK(contains(map->panels.at(0).drawing.spoken, row.row + ": " + std::to_string(row.count.read) + " of " + std::to_string(row.count.planned) + " read"));
  }
}

TEST_CASE("the decision on a zone with places of note has a map of its own rows and of no other") {
  auto sample = sample::small_survey();
  const std::string pitted = survey::zone_of_row(sample.survey, sample.survey.pits.at(0).at.row).id;
  const auto document = compose::compose(sample.source());
  for (const auto &zone : sample.survey.zones) {
    const auto *map = figure(document, "figure/zone-map/" + zone.id);
    INFO(zone.id);
    REQUIRE((map != nullptr || zone.id != pitted));
    const bool doubled = std::ranges::any_of(sample.survey.marks, [&](const survey::Mark &mark) {
      return mark.plate == survey::Plate::doubler && survey::zone_of_row(sample.survey, mark.row).id == zone.id;
    });
    if (zone.id != pitted && !doubled) {
      CHECK(map == nullptr); // nothing in it falls short: see the table of the small survey
      continue;
    }
    REQUIRE(map != nullptr);
    const auto all = labels(map->panels.at(0).drawing);
    for (const auto &result : sample.assessment.marks) {
      const auto &mark = sample.survey.marks[result.mark];
      const bool own = survey::zone_of_row(sample.survey, mark.row).id == zone.id;
      CHECK(leading_to(all, "mark/" + mark.id()) == (own && result.used ? 1 : 0));
    }
  }
}

TEST_CASE("a photograph's flag points to where the camera looked; the bow is at the left") {
  auto sample = sample::small_survey();
  REQUIRE_FALSE(sample.survey.photos.empty());
  const auto flag = [&](const std::string &looking) {
    sample.survey.photos.at(0).looking.text = looking;
    const auto document = compose::compose(sample.source());
    const auto all = labels(figure(document, "figure/map")->panels.at(0).drawing);
    const auto found = std::ranges::find(all, "photo/" + sample.survey.photos.at(0).id, &Label::target);
    REQUIRE(found != all.end());
    return found->ground;
  };
  CHECK(flag("forward") == Label::Ground::flag_left);
  CHECK(flag("aft") == Label::Ground::flag_right);
  CHECK(flag("square on") == Label::Ground::flag);
}

TEST_CASE("stations counted from the stern are turned round: the bow is at the left of every map") {
  auto sample = sample::small_survey();
  const auto place = [&] {
    const auto document = compose::compose(sample.source());
    const auto &drawing = figure(document, "figure/map")->panels.at(0).drawing;
    const auto all = labels(drawing);
    const auto pit = std::ranges::find(all, "pit/P1", &Label::target);
    REQUIRE(pit != all.end());
    return std::pair{pit->at.x - drawing.x0, drawing.x1 - pit->at.x};
  };
  const auto aft = place();
  sample.survey.datum.towards.text = "forward";
  const auto forward = place();
  CHECK(forward.first == Approx(aft.second));
  CHECK(forward.second == Approx(aft.first));
}

TEST_CASE("of a photograph's direction only what was said is drawn") {
  auto sample = sample::small_survey();
  sample.survey.photos.at(0).looking.text = "up";
  const auto document = compose::compose(sample.source());
  const auto all = labels(figure(document, "figure/map")->panels.at(0).drawing);
  const auto found = std::ranges::find(all, "photo/" + sample.survey.photos.at(0).id, &Label::target);
  REQUIRE(found != all.end());
  CHECK(found->ground == Label::Ground::chip);
}

TEST_CASE("the map tells the pits of a row to those who cannot see them") {
  const auto sample = sample::small_survey();
  const auto document = compose::compose(sample.source());
  CHECK(contains(figure(document, "figure/map")->panels.at(0).drawing.spoken, "Pits: P1 4.4."));
}
