#include <catch2/catch.hpp>

#include "helpers.h"

// Wastage by its three measures, and extent by numbers, as the report says them.

using namespace strakebook;
using sample::contains;

namespace {

std::string section(sample::Composed &sample, const std::string &id) {
  assess_again(sample);
  return sample::section_text(compose::compose(sample.source()), id);
}

} // namespace

TEST_CASE("general, local and pit wastage stand apart with what each is taken from") {
  auto sample = sample::small_survey();
  const auto text = section(sample, "assessment");
  CHECK(contains(text, "the mean of 8 marks. Local wastage "));
  CHECK(contains(text, "the lowest of them. Pit wastage 1.6 mm, 27 % (21 to 38) under P1, the least of 1 measured."));
  CHECK(contains(text, "Local: about 3 m² round it (classification practice)."));
  CHECK(contains(section(sample, "results"), "Pit wastage 1.6 mm"));
}

TEST_CASE("a weak basis is said at the zone's decision, with the sizes that fit and the range over them") {
  auto sample = sample::small_survey();
  const auto text = section(sample, "assessment");
  CHECK(contains(text, "The original rests on a weak basis (owner's word): limits on what is left govern"));
  CHECK(contains(section(sample, "original"), "none; the usual EN 10029:1991 A and EN 10051 are considered"));
  CHECK(contains(section(sample, "original"), "Fits under EN 10029:1991 A: "));
  sample.survey.zones.at(1).original.tolerances = {"EN 10051"};
  CHECK(contains(section(sample, "original"), "The tolerances considered have no figure for 4, 8 and 12 mm; EN 10029:1991 A and "
                                              "EN 10051, the usual ones, are used there."));
}

TEST_CASE("the extent is printed with its numbers, and what is not isolated with the column that it takes") {
  auto sample = sample::small_survey();
  auto &pitting = *sample.survey.zones.front().pitting;
  CHECK(contains(section(sample, "assessment"),
                 "By the extent rule: isolated. Pits declared: 1 over 8 m², 0.13 per m², 0.1 % of the area; no two in one row."));
  CHECK_FALSE(contains(section(sample, "assessment"), "extensive column, as all pitting does"));
  pitting.share_percent = {7, 0};
  pitting.spacing = base::Measured{.value = base::Length::millimetres(400), .raw = "0.4 m"};
  CHECK(contains(section(sample, "assessment"),
                 "7 % of the area; least spacing 400 mm. It takes the ladder's extensive column"));
  CHECK(contains(section(sample, "assessment"), "4.0 mm or more, and under 0.8 of the original; extensive: monitor, 12 months"));
  CHECK(contains(section(sample, "appendices"), "no two nearer than 100 mm in one row; extensive is 15 % of the area or more"));
}

TEST_CASE("intense pitting says how many pits were measured of those asked for") {
  auto sample = sample::small_survey();
  sample.survey.zones.front().pitting->share_percent = {16, 0};
  CHECK(contains(section(sample, "results"), "Pits cover 16 % of the area, over 15 %. Measured: 1; asked for: the 5 deepest (ESP Code)."));
}

TEST_CASE("the pitting factor is printed with both its figures, or why there is none") {
  auto sample = sample::small_survey();
  CHECK(contains(section(sample, "results"), ": deepest 1.6 over mean loss "));
  sample.survey.zones.front().original.basis = "owner's word";
  CHECK(contains(section(sample, "results"), "Pitting factor not computable: the original is not known well enough."));
}

TEST_CASE("too few marks: count and share stand at the decision beside what an opinion asks for") {
  auto sample = sample::small_survey();
  for (auto &mark : sample.survey.marks)
    if (mark.row == "BC" && mark.station.raw != "2") {
      mark.status = survey::Status::no_access;
      mark.repeats.clear();
    }
  CHECK(contains(section(sample, "assessment"), "1 of 5 marks were read (20 %), 1 of use. An opinion asks for 5 marks, and for "
                                                "60 % of those planned."));
}
