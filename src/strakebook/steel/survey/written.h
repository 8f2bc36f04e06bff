#pragma once

#include <string>
#include <vector>

#include "strakebook/steel/survey/survey.h"

/// A survey as what it says, key by key: the field table walked over what is there. Marks are not among it, they stand in files of
/// their own.
namespace strakebook::survey {

/// A key with what is written there.
struct WrittenField {
  std::string name;               ///< path below the thing, a blank between keys: "claim", "conflict because", "instead-of insert"
  std::vector<std::string> parts; ///< never empty
  bool apart = false;             ///< each part stands for itself: statements, questions, entries of a list without names
  base::SourceSpan span;
};

/// The parts as one text.
std::string text_of(const WrittenField &field);

/// One entry of a map of names at the top of the file (a pit, a decision), or all that stands under another of its keys.
struct WrittenThing {
  std::string key;       ///< "pits", "vessel"
  std::string id;        ///< "P1"; empty: not of a map of names
  base::SourceSpan span; ///< no place where the file keeps none
  std::vector<WrittenField> fields;
};

/// In the order of the field table, entries in the order of the file. Keys with nothing written have no fields.
std::vector<WrittenThing> things_written(const Survey &survey);

} // namespace strakebook::survey
