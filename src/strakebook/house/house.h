#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/folder.h"
#include "strakebook/base/input_file.h"
#include "strakebook/paper/style/style.h"
#include "strakebook/steel/policy/policy.h"

/// A firm's layout: what it asks (policy), what it says and in which order (wording), how it looks (style).
namespace strakebook::house {

/// A caution or legal statement. `when` names what brings it: one of caution_occasions()
struct Caution {
  std::string id;
  std::string when;
  std::string title, text;
  std::string source; ///< a source that was seen, or "ask locally"
};

struct SectionPlan {
  std::string id; ///< "answer", "scope", ...: one chapter of compose each
  std::string title;
  bool starts_page = false;
  std::string master; ///< page master
  std::vector<std::string>
      text; ///< paragraphs of a section that a house adds; empty for a section that compose writes
};

/// How a figure is reckoned, for print. `text` is one equation: a symbol, "=", and an expression in the symbols of `inputs`, pi, ln,
/// figures and signs; every input stands in it.
struct Formula {
  std::string name;                          ///< what it gives: "weight of the plate"
  std::string text;                          ///< "W = 7.85 A t"
  std::map<std::string, std::string> inputs; ///< symbol -> what it stands for: "A" -> "area in m2"
  std::string source;
};

struct Wording {
  std::string language; ///< BCP 47
  std::map<std::string, std::string>
      words;                         ///< "results.table.caption" -> "Readings at every planned mark ..."
  std::vector<SectionPlan> sections; ///< in report order
  std::vector<Caution> cautions;
  std::vector<std::string> jurisdiction;       ///< paragraphs
  std::map<std::string, std::string> glossary; ///< term -> meaning
  std::map<std::string, Formula> formulas;     ///< by id: "steel-weight"
  std::map<std::string, std::string> signs;    ///< a symbol's word -> the sign that paper prints: "rho" -> "ρ"
  std::vector<std::string> months;             ///< for dates
  std::string firm;                            ///< the firm's name as printed
};

/// What the house asks of a report that goes out.
struct IssueRule {
  bool inputs_beside = false; ///< the kept inputs lie beside the PDF and are not attached to it
};

struct House {
  std::string name;
  policy::Policy policy;
  Wording wording;
  style::Style style;
  IssueRule issue;
  std::vector<base::InputFile> inputs; ///< the layout files read, base first
};

/// Reads layouts/<name>.yaml and everything that it extends (depth first; a later file overrides values of an
/// earlier one key by key, may add sections, criteria, cautions and requirements, never drop or loosen them).
/// A name is looked for in `survey_folder`/layouts first, then in `layouts`. Unknown keys, missing values,
/// wrong order, names that no table gives: errors.
std::optional<House> read_house(std::string_view name, const base::Folder &layouts, const base::Folder &survey_folder,
                                const base::SourceSpan &from,
                                base::Diagnostics &sink);

/// What may bring a caution: the words that `when` of a caution takes.
std::vector<std::string> caution_occasions();

/// The wording for a key; a key that no layout gives throws std::out_of_range naming it (keys are checked
/// when read).
const std::string &word(const Wording &wording, std::string_view key);

} // namespace strakebook::house
