#include "strakebook/base/diagnostic.h"

#include <algorithm>

namespace strakebook::base {

void Diagnostics::error(Code code, const SourceSpan &span, std::string message, std::string expected,
                        std::string write) {
  add({Severity::error, code, span, std::move(message), std::move(expected), std::move(write), ""});
}

void Diagnostics::warning(Code code, const SourceSpan &span, std::string subject, std::string message,
                          std::string expected, std::string write) {
  add({Severity::warning, code, span, std::move(message), std::move(expected), std::move(write),
       std::move(subject)});
}

std::size_t Diagnostics::errors() const { return count(Severity::error); }

std::size_t Diagnostics::count(Severity severity) const {
  return static_cast<std::size_t>(std::count_if(found_.begin(), found_.end(),
                                                [&](const Diagnostic &d) { return d.severity == severity; }));
}

std::string_view name_of(Severity severity) {
  switch (severity) {
  case Severity::note:
    return "note";
  case Severity::warning:
    return "warning";
  case Severity::error:
    return "error";
  }
  return "";
}

} // namespace strakebook::base
