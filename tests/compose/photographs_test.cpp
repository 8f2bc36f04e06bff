#include <catch2/catch.hpp>

#include "helpers.h"
#include "strakebook/house/photo_frame.h"

using namespace strakebook;
using sample::contains;

namespace {

const std::string digest = "00112233445566778899aabbccddeeff0123456789abcdef0123456789abcdef";

/// Photo 1 as a picture of so many pixels, a register's worth of facts about it known.
compose::Source with_picture(const sample::Composed &sample, int width, int height) {
  auto source = sample.source();
  source.photos["1"] = {{digest, 451, 338}, width, height, 220};
  source.inputs.push_back({.kind = "photograph", .path = "photos/p1.jpg", .digest = digest, .bytes = 5123456});
  return source;
}

sample::Composed named_file() {
  auto sample = sample::small_survey();
  sample.survey.photos.front().file.text = "photos/p1.jpg";
  return sample;
}

std::string chapter(const compose::Source &source) { return sample::section_text(compose::compose(source), "photographs"); }

std::string appendices(const compose::Source &source) { return sample::section_text(compose::compose(source), "appendices"); }

/// Photographs that stand outside of columns: over the whole width of the page.
int wide_ones(const std::vector<content::Block> &blocks) {
  int count = 0;
  for (const auto &block : blocks) {
    count += std::holds_alternative<content::Photo>(block.what);
    if (const auto *together = std::get_if<content::Together>(&block.what)) count += wide_ones(together->blocks);
  }
  return count;
}

int wide_ones(const content::Document &document) {
  for (const auto &section : document.sections)
    if (section.id == compose::section_id("photographs")) return wide_ones(section.blocks);
  return -1;
}

} // namespace

TEST_CASE("an empty frame says why it is empty, in the surveyor's words, and what it stands for") {
  auto sample = sample::small_survey();
  auto &photo = sample.survey.photos.front();
  const std::string stands_for = "/placeholder: PW 3.4, port wind-and-water, square on\n";
  CHECK(contains(chapter(sample.source()), "no file given" + stands_for));
  photo.not_taken.text = "the light had gone";
  CHECK(contains(chapter(sample.source()), "not taken: the light had gone" + stands_for));
  photo.not_taken = {};
  photo.withheld.text = "a neighbour is on it";
  CHECK(contains(chapter(sample.source()), "withheld: a neighbour is on it" + stands_for));
  photo.withheld = {};
  photo.file.text = "photos/p1.jpg"; // named, and not among what was read
  CHECK(contains(chapter(sample.source()), "file not found: photos/p1.jpg" + stands_for));
}

TEST_CASE("where the survey does not say which way the camera looked, nothing says it") {
  auto sample = sample::small_survey();
  sample.survey.photos.front().looking = {};
  CHECK(contains(chapter(sample.source()), "placeholder: PW 3.4, port wind-and-water\n"));
  CHECK_FALSE(contains(chapter(sample.source()), "square on,"));
}

TEST_CASE("the register gives the file to the bit, what became of it, and where it stands") {
  const auto sample = named_file();
  const auto text = chapter(with_picture(sample, 4000, 3000));
  INFO(text);
  CHECK(contains(text, "1\n->photo/1\nphotos/p1.jpg, 5123456/P1 with scale card\nPW 3.4/not stated\n"
                       "4000 \u00D7 3000/451 \u00D7 338, 220/in\n"
                       "0011 2233 4455 6677 8899 aabb ccdd eeff/0123 4567 89ab cdef 0123 4567 89ab cdef\n"));
  // It stands there once: the list of what was read leaves it to the register.
  const auto read = appendices(with_picture(sample, 4000, 3000));
  CHECK_FALSE(contains(read, "photos/p1.jpg"));
  CHECK(contains(read, "The photographs stand in "));
  CHECK(contains(read, "to 220 pixels an inch, JPEG quality 88"));
}

TEST_CASE("the day of a photograph is the surveyor's alone") {
  auto sample = named_file();
  sample.survey.photos.front().taken = base::Located<base::Date>{{2026, 10, 14}};
  CHECK(contains(chapter(with_picture(sample, 4000, 3000)), "PW 3.4/14 October 2026\n"));
}

TEST_CASE("the register says of a photograph without a picture why there is none") {
  auto sample = sample::small_survey();
  sample.survey.photos.front().withheld.text = "a neighbour is on it";
  CHECK(contains(chapter(sample.source()), "withheld: a neighbour is on it/P1 with scale card\n"));
}

TEST_CASE("a picture three times as wide as high has the width of the page") {
  const auto sample = named_file();
  CHECK(wide_ones(compose::compose(with_picture(sample, 3000, 1000))) == 1);
  CHECK(wide_ones(compose::compose(with_picture(sample, 2999, 1000))) == 0);
  const auto &style = sample.house.style;
  CHECK(house::photo_frame(style, "halves", 3000, 1000).size.width > house::photo_frame(style, "halves", 2999, 1000).size.width * 2);
}

TEST_CASE("a photograph that was not taken has no day") {
  auto sample = sample::small_survey();
  sample.survey.photos.front().not_taken.text = "the light had gone";
  CHECK(contains(chapter(sample.source()), "not taken: the light had gone/P1 with scale card\nPW 3.4/\u2013\n"));
}

TEST_CASE("a survey without photographs has no register") {
  auto sample = sample::small_survey();
  sample.survey.photos.clear();
  for (auto &pit : sample.survey.pits) pit.photos.clear();
  for (auto &note : sample.survey.notes) note.photos.clear();
  CHECK(contains(chapter(sample.source()), "No photographs were taken."));
  CHECK_FALSE(contains(appendices(sample.source()), "photograph"));
}
