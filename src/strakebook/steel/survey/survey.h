#pragma once

#include <string>
#include <vector>

#include "strakebook/base/input_file.h"
#include "strakebook/steel/survey/after_issue.h"
#include "strakebook/steel/survey/earlier.h"
#include "strakebook/steel/survey/identity.h"
#include "strakebook/steel/survey/measurement.h"
#include "strakebook/steel/survey/opinion.h"
#include "strakebook/steel/survey/supplies.h"

/// A whole survey as the surveyor wrote it: plain values, each with its place. Lists keep the order of the
/// file.
namespace strakebook::survey {

struct Survey {
  std::string house; ///< layout it names
  Report report;
  Instructions instructions;
  Surveyor surveyor;
  Vessel vessel;
  Conditions conditions;
  Datum datum;
  std::vector<Gauge> gauges;
  std::vector<Zone> zones;
  std::vector<Row> rows;
  std::vector<Mark> marks; ///< every planned mark, row by row, stations ascending
  std::vector<Pit> pits;
  std::vector<Doubler> doublers;
  std::vector<Note> notes;
  std::vector<NoneFound> none_found;
  std::vector<Photo> photos;
  std::vector<CriterionUse> criteria;          ///< in the survey's order
  std::vector<policy::Criterion> own_criteria; ///< written in the survey itself
  std::vector<Decision> decisions;
  std::vector<Recommendation> recommendations;
  std::vector<SteelworkItem> steelwork;
  CoatingAndAnodes coating;
  std::vector<Limitation> limitations;
  std::vector<Acknowledgement> acknowledgements;
  std::vector<EarlierSurvey> earlier; ///< in the order of the file
  AfloatFigures afloat;
  Words previous_survey; ///< what is known of an earlier survey, or that there is none
  Answer answer;
  std::vector<IssueNote> issue_record;
  std::vector<Recipient> recipients;  ///< of this issue
  std::optional<Amendment> amendment; ///< of an issue after the first
  std::vector<Addendum> addenda;
  std::vector<CarriedItem> carried; ///< open when this survey began
  std::vector<Named> private_notes; ///< the surveyor's own: never printed, never kept with an issued report
  std::vector<base::InputFile>
      inputs;            ///< survey.yaml first, then readings; photographs are added by the media gate
  base::SourceSpan span; ///< the file's first line
};

const Zone *zone_of(const Survey &survey, std::string_view id);
const Row *row_of(const Survey &survey, std::string_view id);
const Pit *pit_of(const Survey &survey, std::string_view id);
const Mark *mark_of(const Survey &survey, std::string_view id); ///< "PW 9"
/// Stations are counted from the stern towards the bow.
bool counts_forward(const Datum &datum);
const Gauge *gauge_of(const Survey &survey, std::string_view id);
/// The velocity that was set, in m/s, of a gauge that says "5920 m/s"; nullopt where it is not so written.
std::optional<base::Decimal> velocity_set(const Gauge &gauge);
/// How far the repeats at a mark lie apart; nothing where there are none.
base::Length spread(const Mark &mark);
const Zone &zone_of_row(const Survey &survey,
                        std::string_view row); ///< precondition: the row exists (the reader has seen to it)

} // namespace strakebook::survey
