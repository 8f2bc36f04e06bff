#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "strakebook/base/codes.h"
#include "strakebook/base/source.h"

namespace strakebook::base {

enum class Severity { note, warning, error };

std::string_view name_of(Severity severity); ///< "note", "warning", "error"

/// One thing a reader is told: what is wrong and where, what was found and expected, and what to write instead.
struct Diagnostic {
  Severity severity = Severity::error;
  Code code{};
  SourceSpan span;
  std::string message;  ///< what is wrong with this value, one sentence
  std::string expected; ///< what was expected, with the numbers; may be empty
  std::string write;    ///< what to write; may be empty
  std::string subject;  ///< for a warning: the id by which a survey acknowledges it (e.g. "neighbour-jump PW 9"); else empty
};

/// Collects everything that is found in a run; readers go on after an error so that one does not hide the next ten.
class Diagnostics {
public:
  void add(Diagnostic d) { found_.push_back(std::move(d)); }
  void error(Code code, const SourceSpan &span, std::string message, std::string expected = "", std::string write = "");
  void warning(Code code, const SourceSpan &span, std::string subject, std::string message, std::string expected = "",
               std::string write = "");
  const std::vector<Diagnostic> &all() const { return found_; }
  std::size_t errors() const;
  std::size_t count(Severity severity) const;
  bool ok() const { return errors() == 0; }

private:
  std::vector<Diagnostic> found_;
};

/// Terminal form, one block per diagnostic in the order found, beginning `file:line:col: error SB0103: ...` so that editors
/// can jump (without a place: `file: error ...`); then the source line with the place marked, `expected:`, `write:` and, for
/// what a survey can acknowledge, `id:`. A blank line ends each block, a count line the whole.
std::string terminal_text(const Diagnostics &diagnostics);

/// The same content as a JSON object {"diagnostics":[...],"errors":n,"warnings":n}; two-space indent, ends with newline. Each
/// has file, line, column, length (0 without a place), severity, code, name, message, expected, write, source_line, subject.
std::string json_text(const Diagnostics &diagnostics);

} // namespace strakebook::base
