#include <catch2/catch.hpp>

#include "drawing_support.h"
#include "strakebook/paper/typeset/photo.h"

using namespace drawing_test;
using content::operator+;

namespace {

content::Photo photo(std::optional<base::ImageRef> image) {
  content::Photo p;
  p.image = std::move(image);
  p.placeholder = content::strong("no photograph") + content::plain(" in this issue");
  p.number = "2";
  p.caption = content::plain("Pit P11 in its place");
  return p;
}

typeset::Fragment whole(Desk &desk, const content::Photo &p) {
  desk.look.text["photo-placeholder"].align = style::Align::centre;
  const auto out = typeset::lay_photo(p, {{200}, {600}, {600}}, desk.context());
  return std::get<typeset::Whole>(out).fragment;
}

} // namespace

TEST_CASE("a picture keeps its shape inside its frame and stands on its caption") {
  Desk desk;
  // Frame 200 x 120: a square picture is limited by the height, a long one by the width.
  const auto square = all<page::Picture>(whole(desk, photo(base::ImageRef{"d", 800, 800}))).at(0).box;
  CHECK(square.size.width.v == Approx(120));
  CHECK(square.at.x.v == Approx(0));
  CHECK(square.at.y.v == Approx(0));
  const auto flat = all<page::Picture>(whole(desk, photo(base::ImageRef{"d", 2000, 400}))).at(0).box;
  CHECK(flat.size.height.v == Approx(40));
  CHECK(flat.at.x.v == Approx(0));
  CHECK(flat.at.y.v == Approx(80));
}

TEST_CASE("an empty frame is crossed by diagonals that leave its words free") {
  Desk desk;
  const auto set = whole(desk, photo(std::nullopt));
  CHECK(all<page::Picture>(set).empty());
  const auto paths = all<page::Path>(set);
  REQUIRE(paths.size() == 2);
  REQUIRE(paths[1].steps.size() == 8);
  const auto runs = all<page::Run>(set);
  const double left = runs[0].origin.x.v, top = runs[0].origin.y.v - 8;
  for (std::size_t i = 0; i < 8; i += 2) {
    const auto inner = std::get<page::Move>(paths[1].steps[i]).to;
    const bool beside = inner.x.v < left || inner.x.v > 200 - left;
    const bool over = inner.y.v < top || inner.y.v > 120 - top;
    CHECK((beside || over));
  }
}

TEST_CASE("caption and strip stand under the frame, the number in the indent") {
  Desk desk;
  desk.look.measures["photo-hang"] = {25};
  auto p = photo(base::ImageRef{"d", 800, 800});
  CHECK(whole(desk, p).size.height.v == Approx(120 + 6 + 10));
  p.strip = board();
  const auto set = whole(desk, p);
  CHECK(set.size.height.v == Approx(120 + 6 + 10 + 6 + 90));
  const auto runs = all<page::Run>(set);
  REQUIRE(runs.size() == 2);
  CHECK(runs[0].text == "2");
  CHECK(runs[0].origin.x.v == Approx(0));
  CHECK(runs[1].origin.x.v == Approx(25));
}

TEST_CASE("a photograph is never split") {
  Desk desk;
  auto p = photo(base::ImageRef{"d", 800, 800});
  p.strip = board();
  const auto at = [&](double height) { return typeset::lay_photo(p, {{200}, {height}, {600}}, desk.context()); };
  CHECK(std::holds_alternative<typeset::Whole>(at(232)));
  CHECK(std::holds_alternative<typeset::NextPage>(at(231.9)));
}

TEST_CASE("an empty frame grows with its words") {
  Desk desk;
  auto p = photo(std::nullopt);
  p.number.clear();
  p.caption.clear();
  CHECK(whole(desk, p).size.height.v == Approx(120));
  p.placeholder = content::plain("one");
  for (int line = 0; line < 14; ++line) p.placeholder = p.placeholder + content::Inlines{content::LineBreak{}} + content::plain("more");
  CHECK(whole(desk, p).size.height.v == Approx(15 * 10 + 2 * 6));
}

TEST_CASE("over a wide page, caption and strip keep to their own measures") {
  Desk desk;
  desk.look.measures["photo-strip"] = {80};
  desk.look.measures["caption-measure"] = {90};
  auto p = photo(base::ImageRef{"d", 1600, 400});
  p.strip = board();
  p.caption = content::plain("a caption of as many words as it takes to fill more than one line of it");
  for (const auto &run : all<page::Run>(whole(desk, p))) CHECK(run.origin.x.v < 90);
  for (const auto &path : all<page::Path>(whole(desk, p)))
    for (const auto &step : path.steps)
      if (const auto *line = std::get_if<page::Line>(&step)) CHECK(line->to.x.v <= 80);
}
