#pragma once

#include <functional>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "strakebook/steel/survey/vocabulary.h"

/// How each type of value reads back as text: what a comparison of two surveys shows and compares.
namespace strakebook::survey {

/// A value, or one of those that a map of names holds. Lengths carry their unit: "5.6 mm"; digits are the surveyor's.
struct Written {
  std::string name;               ///< of a map of names, the name; "source" of a value that says where it comes from
  std::vector<std::string> parts; ///< one text, or those of a list; empty: nothing is written
  bool apart = false;             ///< each part stands for itself, as statements do; else they make one list
  base::SourceSpan span;          ///< no place where the value keeps none
};
using SeeWritten = std::function<void(Written)>;

/// "5.6 mm", also where the unit was implied.
std::string with_unit(const base::Measured &length);
/// "measured", "told, owner", as a survey writes it.
std::string text_of(const base::Provenance &from);
/// "BP, BC 4 to 13", "zone W", "whole shell"; empty where nothing is written.
std::string text_of(const Reach &reach);

void each_written(const std::string &, const SeeWritten &);
void each_written(const Words &, const SeeWritten &);
void each_written(const int &, const SeeWritten &);
void each_written(const base::Decimal &, const SeeWritten &);
void each_written(const base::Length &, const SeeWritten &);
void each_written(const base::Measured &, const SeeWritten &);
void each_written(const base::Date &, const SeeWritten &);
void each_written(const Fact &, const SeeWritten &);
void each_written(const LengthFact &, const SeeWritten &);
void each_written(const Place &, const SeeWritten &);
void each_written(const Reach &, const SeeWritten &);
void each_written(const std::vector<Fact> &, const SeeWritten &);
void each_written(const std::vector<Named> &, const SeeWritten &);
void each_written(const std::vector<Acknowledgement> &, const SeeWritten &);
void each_written(const std::vector<Statement> &, const SeeWritten &);

struct InlineGrid;
inline void each_written(const InlineGrid &, const SeeWritten &) {} ///< readings are marks

template <Worded E> void each_written(const E &value, const SeeWritten &see) {
  for (const auto &choice : choices_of(value))
    if (choice.value == value)
      see({.parts = {std::string(choice.word)}});
}

template <class T> void each_written(const base::Located<T> &value, const SeeWritten &see) {
  each_written(value.value, [&](Written written) {
    written.span = value.span;
    see(std::move(written));
  });
}
template <class T> void each_written(const std::optional<T> &value, const SeeWritten &see) {
  if (value)
    each_written(*value, see);
}
template <class T> void each_written(const std::vector<T> &values, const SeeWritten &see) {
  Written all{.apart = std::is_same_v<T, Words>};
  for (const auto &value : values)
    each_written(value, [&](const Written &one) {
      all.parts.insert(all.parts.end(), one.parts.begin(), one.parts.end());
      if (all.span.line == 0)
        all.span = one.span;
    });
  if (!all.parts.empty())
    see(std::move(all));
}

} // namespace strakebook::survey
