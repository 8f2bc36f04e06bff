#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/base/diagnostic.h"
#include "strakebook/base/provenance.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/steel/survey/vocabulary.h"

namespace strakebook::survey {

/// A name that has to lead somewhere; looked up when the whole file has been read, because order is free.
struct Reference {
  Vocabulary kind{};
  std::string name;
  base::SourceSpan span;
};

/// How the datum of another survey counts, while that survey's values are being read.
struct OtherDatum {
  base::Unit unit = base::Unit::metre;
  std::optional<base::Length> frame; ///< where it counts frames: their spacing
};

/// What one run of the reader carries: where errors go, and what values further on depend on.
struct Reading {
  base::Diagnostics &sink;
  const Survey &survey;                   ///< as far as it has been read
  std::optional<base::Provenance> source; ///< holds for the values of the map being read
  std::vector<Reference> references;
  std::vector<std::function<void(Reading &)>>
      afterwards; ///< messages that need the marks, run when they have been read
  bool marks_complete =
      true; ///< false: readings were refused, so a mark that is missing need not be missing from them
  std::optional<OtherDatum> other_datum = {}; ///< stations are counted so; else as survey.datum says

  base::Unit station_unit() const; ///< of a datum that counts no frames
  std::string_view stations_in() const; ///< "m", "ft", "frames"

  void error(base::Code code, const base::SourceSpan &span, std::string message, std::string expected = {},
             std::string write = {});
  /// unknown_word with the known ones and the nearest.
  void unknown_word(const base::SourceSpan &span, std::string_view word, std::string_view what,
                    const std::vector<std::string> &known);
};

/// The text of a scalar, or nullptr after wrong_kind was reported. `expected`: "a date".
const std::string *scalar(Reading &reading, const base::YamlNode &node, std::string_view expected);

/// Hands everything on in the order of the file, `first` before any other, so that a run reads like the file.
void hand_over(const base::Diagnostics &found, const base::SourcePtr &first, base::Diagnostics &sink);

/// What a node is, in words: "a map", "a list", "a text".
std::string_view kind_words(const base::YamlNode &node);

} // namespace strakebook::survey
