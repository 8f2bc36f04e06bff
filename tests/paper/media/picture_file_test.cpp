#include <catch2/catch.hpp>

#include "gate.h"
#include "pictures.h"

using namespace strakebook;

namespace {

/// A picture after the gate, and after its own file has passed the gate.
void check_same_again(const Gate &first) {
  REQUIRE(first.image);
  const auto file = media::file_of(*first.image);
  const Gate again(file, "photos/kept");
  REQUIRE(again.image);
  CHECK(again.image->data == first.image->data);
  CHECK(again.image->coding == first.image->coding);
  CHECK(again.image->components == first.image->components);
  CHECK(again.image->ref.width == first.image->ref.width);
  CHECK(again.image->ref.height == first.image->ref.height);
  CHECK(media::file_of(*again.image) == file);
}

/// Half the pixels either way.
media::Placing reduced() {
  auto placing = Gate::as_given();
  placing.frame = [](media::Extent) { return base::Size{{10 * 72.0}, {10 * 72.0}}; };
  return placing;
}

} // namespace

TEST_CASE("the file of a picture that passed the gate makes the same picture again") {
  const auto samples = pictures::slope_samples(21, 13);
  check_same_again(Gate(pictures::png(pictures::Kind::rgb, 21, 13, samples)));
  check_same_again(Gate(pictures::png(pictures::Kind::rgb, 21, 13, samples), "a.png", {}, reduced()));
  check_same_again(Gate(pictures::png(pictures::Kind::grey, 1, 1, {77})));
  for (const int components : {1, 3, 4})
    for (const bool progressive : {false, true})
      for (const int orientation : {0, 1, 6}) {
        const auto jpeg = pictures::jpeg(24, 16, {components, progressive, orientation, "by N. N."}, pictures::slope);
        INFO(components << " " << progressive << " " << orientation);
        check_same_again(Gate(jpeg));
        check_same_again(Gate(jpeg, "a.jpg", {}, reduced()));
      }
}

TEST_CASE("the file of a picture holds nothing of its metadata") {
  for (const int orientation : {1, 6}) {
    const Gate gate(pictures::jpeg(24, 16, {3, false, orientation, "by N. N."}, pictures::slope));
    REQUIRE(gate.image);
    const auto file = media::file_of(*gate.image);
    for (const std::string mark : {"Exif", "GPS", "by N. N.", "JFIF"}) CHECK(file.find(mark) == file.npos);
  }
  const Gate gate(pictures::with_exif(pictures::png(pictures::Kind::rgb, 21, 13, pictures::slope_samples(21, 13)), "IDAT", 6));
  REQUIRE(gate.image);
  const auto file = media::file_of(*gate.image);
  for (const std::string mark : {"eXIf", "GPS", "tEXt", "tIME"}) CHECK(file.find(mark) == file.npos);
}

TEST_CASE("the libraries that pictures depend on are named with their versions") {
  const auto named = media::libraries();
  REQUIRE(named.size() == 3);
  for (const auto &one : named) CHECK(one.find_first_of("0123456789") != one.npos);
}
