#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/steel/survey/survey.h"

/// The closed lists of words that a survey is written with. Reader, schema and skeleton all read these.
namespace strakebook::survey {

template <class E> struct Choice {
  std::string_view word;
  E value;
};

std::span<const Choice<State>> choices_of(State);
std::span<const Choice<Side>> choices_of(Side);
std::span<const Choice<Status>>
    choices_of(Status); ///< the words of a cell without a usable reading; `read` has none
std::span<const Choice<Surface>> choices_of(Surface);
std::span<const Choice<Plate>> choices_of(Plate);
std::span<const Choice<Note::Kind>> choices_of(Note::Kind);
std::span<const Choice<StatementKind>> choices_of(StatementKind);
std::span<const Choice<Counts>> choices_of(Counts);
std::span<const Choice<StationsIn>> choices_of(StationsIn);
std::span<const Choice<policy::Plating>> choices_of(policy::Plating);
std::span<const Choice<policy::CriterionKind>>
    choices_of(policy::CriterionKind); ///< those a survey may write itself
std::span<const Choice<base::Unit>> choices_of(base::Unit);
std::span<const Choice<Closing>> choices_of(Closing);
std::span<const Choice<Became>> choices_of(Became);
std::span<const Choice<bool>> choices_of(bool);

template <class E>
concept Worded = requires(E e) {
  choices_of(e);
};

template <Worded E> std::vector<std::string> words_of(E kind) {
  std::vector<std::string> words;
  for (const auto &choice : choices_of(kind))
    words.emplace_back(choice.word);
  return words;
}

/// Where a gauge's doubt can come from: the names of a budget's components.
std::span<const std::string_view> doubt_components();

/// The words of a list written "yes|no|no opinion".
std::vector<std::string> split_choices(std::string_view list);

/// What a name in the survey refers to: the house's words first, then the survey's own names.
enum class Vocabulary {
  action,
  basis,
  tolerance,
  water,
  metal,
  criterion,
  zone,
  row,
  gauge,
  photo,
  recommendation,
  limitation,
  evidence,
  mark_or_pit,
  new_criterion ///< a name of the survey's own, which must not be one of the house's
};

/// How the names of a map are spelled, so that prose can point at them.
enum class IdForm { free, row, zone, pit, doubler, note, steelwork, number, doubt };

bool fits(IdForm form, std::string_view id);
std::string_view in_words(IdForm form);   ///< "capital letters, then figures, at least two: PW"
std::string_view example_of(IdForm form); ///< "PW"
std::string_view pattern_of(IdForm form); ///< ECMA-262, as a JSON Schema wants it

} // namespace strakebook::survey
