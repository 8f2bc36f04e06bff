#include <catch2/catch.hpp>

#include "helpers.h"
#include "strakebook/steel/survey/prose.h"

using namespace strakebook;
using namespace strakebook::survey;
using namespace strakebook::survey::testing;

namespace {

const Survey &whole() {
  static const Survey survey = run(here / "whole/survey.yaml").survey;
  return survey;
}

/// Pieces one after the other: pointers in brackets with their target's id, emphasis between asterisks.
std::string shown(std::string_view text) {
  std::string out;
  for (const auto &piece : pieces(whole(), text)) {
    if (const auto *plain = std::get_if<Plain>(&piece))
      out += plain->emphasis ? "*" + plain->text + "*" : plain->text;
    if (const auto *pointer = std::get_if<Pointer>(&piece))
      out += fmt::format("[{}|{}]", pointer->text, pointer->id);
  }
  return out;
}

} // namespace

TEST_CASE("prose is cut at its references and nowhere else") {
  CHECK(shown("See P1, PW 3 and photo 1.") == "See [P1|P1], [PW 3|PW 3] and [photo 1|1].");
  CHECK(shown("Photos 1 and 2; item 1, limitation 1; zone W, D1, N2, S1") ==
        "[Photos 1|1] and [2|2]; [item 1|1], [limitation 1|1]; [zone W|W], [D1|D1], [N2|N2], [S1|S1]");
  CHECK(shown("photo\n1") == "[photo\n1|1]"); // a line of block text may end inside it
  CHECK(shown("P1 is *not* sound: *see P1*") == "[P1|P1] is *not* sound: *see *[P1|P1]");
  CHECK(shown("2 * 3 * 4") == "2 * 3 * 4");
  CHECK(shown("N1-N2 ring sound") == "[N1-N2|N1] ring sound");
  CHECK(shown("PW 3.4 lies between marks, in S355, a zone of rust, 3 mm") ==
        "PW 3.4 lies between marks, in S355, a zone of rust, 3 mm");
  CHECK(shown("xP1, P1x and photo 1st") == "xP1, P1x and photo 1st");
  CHECK(shown("PW 3 mm") == "[PW 3|PW 3] mm");
}

TEST_CASE("a reference to nothing is found, a place without a mark is not one") {
  const auto lost = [](std::string_view text) { return dangling(whole(), text); };
  using Lost = std::vector<std::string>;
  CHECK(lost("P9, photo 12, PW 99, item 7, limitation 3, zone Q, D2, N3, S2") ==
        Lost{"P9", "photo 12", "PW 99", "item 7", "limitation 3", "zone Q", "D2", "N3", "S2"});
  CHECK(lost("P1-P4") == Lost{"P1-P4"});
  CHECK(lost("photos 1, 2 and 3") == Lost{"3"});
  CHECK(lost("P1 at PW 3.4; BC 5 over the keel blocks").empty()); // a pit and a limitation are there
  CHECK(lost("PW 3.5") == Lost{});                                // recommendation 1 reaches from PW 3 to 4
  CHECK(lost("PW 5.5") == Lost{"PW 5.5"});
}
