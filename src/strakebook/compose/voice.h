#pragma once

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/text.h"
#include "strakebook/compose/compose.h"
#include "strakebook/compose/ids.h"
#include "strakebook/paper/content/document.h"

/// How every chapter speaks: the house's words with values filled in. No words for readers stand in the code, only keys.
namespace strakebook::compose {

using base::Length;
using base::Ratio;
using content::Inlines;

/// A place holder of a pattern and the inlines (a link, a sign) that take its place.
struct InlineFill {
  std::string_view name;
  Inlines value;
};

/// Words that the program worked out. Nothing but Scope::tell_computed makes them, so that no computed statement escapes the
/// test of its words.
class Sentence {
public:
  const Inlines &text() const { return text_; }
  Sentence operator+(const Sentence &next) const; ///< one after the other

private:
  friend struct Scope;
  explicit Sentence(Inlines text) : text_(std::move(text)) {}
  Inlines text_;
};

/// What a chapter is given: everything that is known, and which section of the house's plan it writes.
struct Scope {
  const Source &source;
  const house::SectionPlan &plan;
  std::string number; ///< of the section: "11"

  const survey::Survey &survey() const { return source.survey; }
  const assess::Assessment &assessment() const { return source.assessment; }
  const outlook::Outlook &outlook() const { return source.outlook; }
  const policy::Policy &policy() const { return source.house.policy; }
  const house::Wording &wording() const { return source.house.wording; }

  /// The house's words for a key, place holders filled. Always called with the key written out, so that a test can hold
  /// every key against the layout.
  std::string say(std::string_view key, std::initializer_list<base::Fill> fills = {}) const;
  /// The same with inlines in the place holders; in the words themselves *...* is strong and _..._ italic.
  Inlines tell(std::string_view key, std::initializer_list<InlineFill> fills = {}) const;

  /// The same for what the program works out by itself, whole sentences or parts of one. Such words contain no action: a test
  /// finds their keys by these calls and holds the shipped words to it.
  std::string say_computed(std::string_view key, std::initializer_list<base::Fill> fills = {}) const;
  Sentence tell_computed(std::string_view key, std::initializer_list<InlineFill> fills = {}) const;
};

/// `next` after `text`, where there is one.
void add_sentence(std::optional<Sentence> &text, const std::optional<Sentence> &next);

/// Counters of one section; a chapter holds one as a value and passes it on.
struct Numbering {
  int heads = 0, tables = 0, figures = 0;
};
std::string next_head(const Scope &scope, Numbering &numbering);   ///< "11.2"
std::string next_table(const Scope &scope, Numbering &numbering);  ///< "Table 11.2"
std::string next_figure(const Scope &scope, Numbering &numbering); ///< "Figure 11.2"

// Figures as text. The minus is U+2212, a unit or percent sign is tied to its figure by U+00A0.

std::string with_minus(std::string figure);                  ///< "-0.20" -> "−0.20"
std::string with_sign(std::string figure);                   ///< "0.20" -> "+0.20", "-0.20" -> "−0.20"
std::string tied(std::string_view figure, std::string_view unit); ///< "5.8", "mm" -> "5.8 mm"
std::string untorn(std::string_view text);                   ///< every blank tied: "57 ft 6 in"
std::string fixed_mm(Length value, int places);              ///< rounded: "5.80", no unit
std::string unit_mm(const Scope &scope, std::string_view figure); ///< "5.8" -> "5.8 mm"
std::string as_written(const base::Measured &value);         ///< as written, with its unit: "18.0 m"
std::string in_mm(const base::Measured &value);              ///< its own digits if it was written in mm, else every digit in mm
/// As written; where that was not in mm, with the exact mm behind it: "0.187 in (4.7498 mm)".
std::string with_mm(const Scope &scope, const base::Measured &value);
std::string figure(const base::Decimal &value);              ///< "0.10"
/// A double that nothing turns on, to the nearest figure with so many decimals; never "−0".
std::string rounded(double value, int places);
/// A length in the unit that stations are counted in, to the nearest figure with so many decimals, without its unit.
std::string in_station_unit(const Scope &scope, Length length, int places);
/// A thickness with at least one decimal and as many more as keep it clear of every limit used in this survey.
std::string remaining_text(const Scope &scope, const std::string &zone, Length value);
/// A thickness or a loss exactly, or to two decimals where it has more.
std::string short_mm(Length value);
/// A doubt with so many decimals, rounded up: never less than it is.
std::string doubt_mm(Length doubt, int places);
/// A limit with two decimals, or every decimal it needs up to three; longer ones are rounded up, never down.
std::string limit_text(Length limit);
/// A margin with its sign, two decimals (three where the limit has three), kept clear of nought and of the doubt.
std::string margin_text(const assess::CriterionResult &result, Length band);
/// A share in percent without the sign, with `least` decimals, or one more where it would touch a percent criterion.
std::string percent_figure(const Scope &scope, Ratio share, int least = 0);
/// "36 %".
std::string percent(const Scope &scope, Ratio share);
/// "36 % (34 to 38)": the range over the tolerance or the nominals where one is known.
std::string share_text(const Scope &scope, const assess::LossShare &share);
std::string date(const Scope &scope, base::Date date);       ///< "14 October 2026"

// Words for values.

std::string verdict_meaning(assess::Verdict verdict);        ///< name of its sign: "falls-short"
std::string verdict_word(const Scope &scope, assess::Verdict verdict); ///< "falls short"
/// The same as the house's decision rule names it: four classes tell what is too close apart by the side of the bare figure.
std::string verdict_word(const Scope &scope, const assess::CriterionResult &result);
/// "99 %" of a probability, rounded down; "over 99 %", "under 1 %", never on to 0 or 100 % and never up to a mark that it is below.
std::string probability_text(const Scope &scope, const std::optional<double> &probability);
Inlines verdict_sign(const Scope &scope, assess::Verdict verdict);
std::string status_word(const Scope &scope, survey::Status status);   ///< "no-echo"
std::string surface_word(const Scope &scope, survey::Surface surface);
std::string side_word(const Scope &scope, survey::Side side);
std::string extent_word(const Scope &scope, assess::Extent extent);
std::string state_word(const Scope &scope, survey::State state);
std::string origin_words(const Scope &scope, const base::Provenance &from); ///< "told by the owner"
std::string action_name(const Scope &scope, const std::string &action);     ///< the policy's name, or the id as written
const policy::Criterion *criterion(const Scope &scope, std::string_view id); ///< of this survey; nullptr if none
std::string capitalised(std::string words);                                 ///< its first letter a capital
std::string join_and(const Scope &scope, std::span<const std::string> parts); ///< "a, b and c"

// Places.

std::string tied_mark(std::string_view mark);                            ///< "PW 9", its blank tied
std::string row_words(const Scope &scope, std::string_view row);        ///< "port wind-and-water"
std::string mark_place(const Scope &scope, std::string_view mark);      ///< "PW 9, port wind-and-water"
std::string pit_place(const Scope &scope, const survey::Pit &pit);      ///< "P3, PW 9.4, port wind-and-water"
std::string reach_words(const Scope &scope, const survey::Reach &reach); ///< "PW and SW 5.5–12.5"
std::string zone_name(const Scope &scope, std::string_view zone);
bool is_pit(const Scope &scope, std::string_view subject);              ///< "P3" is a pit of this survey, "PW 9" is not
std::string subject_target(const Scope &scope, std::string_view subject); ///< block id of a mark or pit

// Prose and blocks.

/// The surveyor's own words: pointers become links, *...* becomes strong, line ends become blanks.
Inlines prose(const Scope &scope, std::string_view text);
/// In italic that nothing is given yet (or, in a final, not stated).
Inlines not_given(const Scope &scope);
/// The same; where nothing was written, in italic that it is not yet given (or, in a final, not stated).
Inlines answer_to(const Scope &scope, const survey::Words &words);
/// One paragraph for each stretch between empty lines; nothing written: "not yet given" over a dashed rule.
std::vector<content::Block> paragraphs(const Scope &scope, const survey::Words &words, std::string text_style);
Inlines link(std::string target, std::string shown);                    ///< the words themselves lead there
Inlines page_link(std::string target);                                  ///< "p. 9", soft
Inlines label_link(std::string target);                                 ///< "Table 4, p. 9", soft

content::Block block(decltype(content::Block::what) what, std::string id = {}, base::SourceSpan origin = {});
/// The section that the plan asks for, its heading set first.
content::Section section_of(const Scope &scope);
content::Block sub_heading(const Scope &scope, Numbering &numbering, std::string text, std::string id = {});
content::Block item_heading(std::string text, std::string id = {});     ///< level 4: not in the contents, no number
content::Block paragraph(Inlines text, std::string text_style);
void append(std::vector<content::Block> &to, std::vector<content::Block> more);
content::Cell cell(Inlines text);
content::Cell cell(std::string text);

} // namespace strakebook::compose
