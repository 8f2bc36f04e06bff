#pragma once

#include <string_view>
#include <vector>

namespace strakebook::base {

/// Every diagnostic code, in one table; a number is never used again for something else. STRAKEBOOK_CODES(X) calls
/// X(identifier, "SB####", "what it reports").
#define STRAKEBOOK_CODES(X)                                                                                            \
  X(file_unreadable, "SB0001", "a file cannot be opened or read")                                                      \
  X(not_utf8, "SB0002", "a text file holds bytes that are not UTF-8")                                                  \
  X(file_too_large, "SB0003", "a file is larger than the reader accepts")                                              \
  X(path_escapes, "SB0004", "a path leaves the survey's own folder")                                                   \
  X(yaml_syntax, "SB0101", "the text is not well-formed YAML")                                                         \
  X(yaml_documents, "SB0102", "not exactly one document")                                                              \
  X(yaml_duplicate_key, "SB0103", "a key is written twice in one map")                                                 \
  X(yaml_forbidden, "SB0104", "an anchor, alias, merge key or tag")                                                    \
  X(yaml_too_deep, "SB0105", "maps or lists are nested too deeply")                                                    \
  X(yaml_open_quote, "SB0106", "a quoted text is not closed where it should be")                                       \
  X(unknown_key, "SB0201", "a key that is not known here")                                                             \
  X(missing_key, "SB0202", "a required key is missing")                                                                \
  X(wrong_kind, "SB0203", "a map, list or text where another was expected")                                            \
  X(empty_value, "SB0204", "a key without a value")                                                                    \
  X(unknown_word, "SB0205", "a word that is not one of the known ones")                                                \
  X(bad_number, "SB0206", "text that is not a number by the strict grammar")                                           \
  X(bad_length, "SB0207", "text that is not a length")                                                                 \
  X(bad_date, "SB0208", "text that is not a date")                                                                     \
  X(out_of_range, "SB0209", "a number outside its range")                                                              \
  X(bad_version, "SB0210", "a format version this program does not read")                                              \
  X(csv_syntax, "SB0301", "a line of the readings file breaks its declared form")                                      \
  X(csv_header, "SB0302", "the head of the readings file is not what was declared")                                    \
  X(csv_count, "SB0303", "the readings file has not the declared count of lines or marks")                             \
  X(csv_reading, "SB0304", "a cell is neither readings nor a status word")                                             \
  X(duplicate_mark, "SB0305", "a mark is given twice")                                                                 \
  X(dangling_reference, "SB0401", "a reference leads to nothing")                                                      \
  X(pit_one_figure, "SB0402", "a pit with only one of depth and adjacent")                                             \
  X(pit_not_closed, "SB0403", "a pit whose depth, adjacent and remaining do not agree")                                \
  X(reading_implausible, "SB0404", "a reading that no plate here can have")                                            \
  X(doubler_on_doubler, "SB0405", "a doubler over a doubler")                                                          \
  X(photo_unreadable, "SB0407", "a photograph that is there but does not decode cleanly")                              \
  X(photo_missing, "SB0408", "a photograph named but not in the folder")                                               \
  X(photo_unused, "SB0409", "a photograph that no place or finding refers to")                                         \
  X(unknown_acknowledgement, "SB0410", "an acknowledgement of something that was not reported")                        \
  X(reading_over_original, "SB0411", "a reading above the original thickness and its tolerance")                       \
  X(neighbour_jump, "SB0412", "a reading far from its neighbours")                                                     \
  X(unequal_repeats, "SB0413", "repeats at one mark that lie far apart")                                               \
  X(doubt_unclear, "SB0421", "a gauge's doubt, or a part of it, is given in two ways or in none")                      \
  X(velocity_unclear, "SB0422", "a true velocity without the velocity that was set, or without its basis")             \
  X(coating_unused, "SB0423", "a coating thickness that no reading of its set needs")                                  \
  X(pit_count, "SB0425", "a declared count of pits that is not the number listed")                                     \
  X(pits_unmeasured, "SB0426", "pitting over the share of area, and fewer pits measured than it asks for")             \
  X(doubler_figures, "SB0430", "readings of a doubler that disagree with each other or with its declared thickness")   \
  X(digits_swapped, "SB0431", "a reading that would fit its neighbours with two digits exchanged")                     \
  X(mirror_differs, "SB0432", "a reading far from the same place on the other side")                                   \
  X(readings_repeated, "SB0433", "the same run of readings in two places")                                             \
  X(row_shifted, "SB0434", "a row that fits the other side better when moved by one station")                          \
  X(pit_swapped, "SB0435", "a pit whose depth may be what was left")                                                   \
  X(other_unit, "SB0436", "a reading that another unit would explain")                                                 \
  X(required_missing, "SB0501", "a final report lacks something required")                                             \
  X(conflict_unanswered, "SB0502", "criteria contradict each other and no answer is given")                            \
  X(answer_incomplete, "SB0503", "an answer to a conflict lacks a criterion, a mark or a full sentence")               \
  X(decision_incomplete, "SB0504", "a decision lacks a part that it must have")                                        \
  X(departure_unreasoned, "SB0505", "a decision departs from the ladder without a reason")                             \
  X(no_opinion_required, "SB0506", "too few readings for the opinion given")                                           \
  X(block_check_failed, "SB0507", "a gauge block check is missing or failed without a limitation")                     \
  X(warning_unacknowledged, "SB0508", "a final report with a warning that nobody acknowledged")                        \
  X(recommendation_incomplete, "SB0509", "a recommendation lacks deadline, reason, feasibility or proof")              \
  X(state_content, "SB0510", "content that this state of report may not carry")                                        \
  X(single_echo_open, "SB0511", "single echoes through a coating of unknown thickness without a limitation")           \
  X(claim_uncited, "SB0513", "an adverse claim or a measured statement that cites no mark, pit, photo or note")        \
  X(figure_misquoted, "SB0514", "a measured statement with a figure that the place it cites does not have")            \
  X(station_beyond, "SB0515", "a place beyond the vessel's length")                                                    \
  X(none_found_denied, "SB0516", "a thing said not to be found where one is recorded")                                 \
  X(dates_disagree, "SB0517", "days or issues that are not in their order")                                            \
  X(answer_to_nothing, "SB0518", "an answer to a conflict in a zone that has none")                                    \
  X(reason_length, "SB0519", "a reason on page one of too few or too many sentences")                                  \
  X(earlier_not_before, "SB0520", "an earlier survey that is not earlier, or whose years cannot be counted")           \
  X(earlier_datum, "SB0521", "an earlier survey's datum that does not fix its places")                                 \
  X(earlier_apart, "SB0522", "an earlier survey that has no place in common with this one")                            \
  X(place_grown, "SB0523", "a place thicker than an earlier survey had it, beyond the doubt of both")                  \
  X(next_look_late, "SB0524", "a next survey later than the life that is left allows")                                 \
  X(earlier_beyond, "SB0525", "places of an earlier survey that would lie off the hull")                               \
  X(area_uncovered, "SB0530", "places that do not meet their limit and that nothing recommended covers")               \
  X(round_bilge, "SB0531", "a doubler on a round bilge, or on one whose form is not said")                             \
  X(thin_under_lap, "SB0532", "a doubler laid on plate that is too thin to take its lap")                              \
  X(square_corners, "SB0533", "plate with corners that are square, or too little rounded")                             \
  X(lining_not_cleared, "SB0534", "hot work that does not say what lining is cleared")                                 \
  X(plate_too_small, "SB0535", "plate smaller than the least that is welded in or on")                                 \
  X(lap_width, "SB0536", "a doubler whose lap is too narrow, too broad or not given")                                  \
  X(plate_too_thin, "SB0537", "new plate thinner than the least")                                                      \
  X(plugs_missing, "SB0538", "a broad doubler without plug welds, or with plugs too far apart")                        \
  X(plate_unmeasured, "SB0539", "plate in the schedule whose length, breadth or thickness is not given")               \
  X(little_freeboard, "SB0540", "less freeboard, or height of an opening, than the house asks, after the steel is added") \
  X(afloat_inputs, "SB0541", "steel is added, and what floating is reckoned from is not all given")                    \
  X(anode_metal, "SB0542", "a metal of anodes that does not suit the water")                                           \
  X(too_wide, "SB0543", "what stands out from her sides makes her too wide to pass")                                   \
  X(anodes_unworn, "SB0544", "anodes that have not worn, and nothing said of it")                                      \
  X(pit_blocks_count, "SB0550", "a declared count of blocks that is not the number of depths listed")                  \
  X(pit_blocks_area, "SB0551", "blocks that cover more than their zone")                                               \
  X(pit_blocks_deep, "SB0552", "a pit of a block that is as deep as the plate was when new, or deeper")                \
  X(change_unreasoned, "SB0570", "a change since the issue before, without a reason")                                  \
  X(reason_for_nothing, "SB0571", "a reason for a change that is not there")                                           \
  X(stands_unreasoned, "SB0572", "a decision that stands though what it rests on changed, without a reason")           \
  X(amendment_incomplete, "SB0573", "a corrected issue that does not say what went wrong")                             \
  X(before_unknown, "SB0574", "an issue that replaces one which the register does not have")                           \
  X(carried_unanswered, "SB0580", "an open item of an earlier report that nothing is said of")                         \
  X(addendum_incomplete, "SB0581", "an addendum without its day, its evidence, or who looked")                         \
  X(formula_symbol, "SB0560", "a formula with a symbol that is not explained, or a symbol explained that is not in it") \
  X(criterion_inputs, "SB0601", "a criterion cannot be computed from what the survey gives")                           \
  X(layout_unknown, "SB0701", "a layout that cannot be found")                                                         \
  X(layout_cycle, "SB0702", "layouts that extend each other in a circle")                                              \
  X(layout_loosens, "SB0703", "a layout or survey drops or loosens what its base requires")                            \
  X(layout_order, "SB0704", "ordered values that are not in order")                                                    \
  X(layout_pattern, "SB0705", "a wording with a place holder that nothing fills")                                      \
  X(font_damaged, "SB0706", "a bundled font that does not match its recorded digest")                                  \
  X(rule_and_band, "SB0707", "a decision rule and a band that do not go together")                                     \
  X(glyph_missing, "SB0801", "a character that the bundled faces do not have")                                         \
  X(block_too_large, "SB0802", "a block that does not fit on an empty page")                                           \
  X(references_unstable, "SB0803", "page references that do not settle")                                               \
  X(label_collision, "SB0804", "labels of a figure that do not fit their lanes")                                       \
  X(patterns_damaged, "SB0820", "bundled hyphenation patterns that do not match their recorded digest")                \
  X(decoding_died, "SB0840", "a photograph whose decoder crashed, hung or went past a limit")                          \
  X(decoding_not_started, "SB0841", "no process can be started to decode a photograph")                                \
  X(photo_contradicted, "SB0842", "a photograph with a file and a reason for having none, or with two reasons")        \
  X(register_broken, "SB0850", "a register that was altered, cut or cannot be read")                                   \
  X(already_issued, "SB0851", "a number that was issued with other bytes, or out of its order")                        \
  X(not_final, "SB0852", "a report that is not final cannot be issued")                                                \
  X(recipients_missing, "SB0853", "an issue that does not say who is sent it")                                         \
  X(issuing_failed, "SB0854", "the folder of issues cannot be used")                                                   \
  X(signing_failed, "SB0860", "a signature that cannot be made")                                                       \
  X(not_a_report, "SB0861", "a file that is not a PDF of an issued report")                                            \
  X(output_failed, "SB0901", "the output cannot be written")                                                           \
  X(output_too_large, "SB0902", "a document larger than a PDF file can hold")

enum class Code {
#define X(id, number, text) id,
  STRAKEBOOK_CODES(X)
#undef X
};

std::string_view number_of(Code code);       ///< "SB0103"
std::string_view name_of(Code code);         ///< "yaml_duplicate_key"
std::string_view description_of(Code code);  ///< the table's words
std::vector<Code> all_codes();

} // namespace strakebook::base
