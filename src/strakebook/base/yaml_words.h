#pragma once

#include <string>
#include <string_view>

#include "strakebook/base/codes.h"

namespace strakebook::base {

/// What a reader is told about a fault that the YAML parser found.
struct YamlFault {
  Code code = Code::yaml_syntax;
  std::string message, write;
  int back = 0;         ///< columns by which the place lies before the one that the parser gives
  int column = 0;       ///< the place itself, where the line tells it; else 0
  char unclosed = '\0'; ///< the bracket that lacks its partner
};

/// Our words for the parser's own message. `line`: the source line at which it stopped.
YamlFault explain_yaml(std::string_view parser_message, std::string_view line);

} // namespace strakebook::base
