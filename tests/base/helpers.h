#pragma once

#include <memory>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "strakebook/base/diagnostic.h"

namespace strakebook::base::testing {

inline SourcePtr source_of(std::string text, std::string path = "survey.yaml") {
  return std::make_shared<const SourceFile>(SourceFile{std::move(path), std::move(text)});
}

/// "3:5 SB0103" for each diagnostic, in the order found.
inline std::vector<std::string> places_and_codes(const Diagnostics &sink) {
  std::vector<std::string> out;
  for (const Diagnostic &d : sink.all())
    out.push_back(fmt::format("{}:{} {}", d.span.line, d.span.column, number_of(d.code)));
  return out;
}

} // namespace strakebook::base::testing
