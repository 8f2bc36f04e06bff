#include <nlohmann/json.hpp>

#include "strakebook/base/diagnostic.h"

namespace strakebook::base {
namespace {

using Json = nlohmann::ordered_json;

Json json_of(const Diagnostic &d) {
  Json j;
  const bool placed = d.span.file && d.span.line > 0;
  j["file"] = d.span.file ? d.span.file->path : "";
  j["line"] = placed ? d.span.line : 0;
  j["column"] = placed ? d.span.column : 0;
  j["length"] = placed ? d.span.length : 0;
  j["severity"] = name_of(d.severity);
  j["code"] = number_of(d.code);
  j["name"] = name_of(d.code);
  j["message"] = d.message;
  j["expected"] = d.expected;
  j["write"] = d.write;
  j["source_line"] = placed ? std::string(line_text(*d.span.file, d.span.line)) : "";
  j["subject"] = d.subject;
  return j;
}

} // namespace

std::string json_text(const Diagnostics &diagnostics) {
  Json j;
  j["diagnostics"] = Json::array();
  for (const Diagnostic &d : diagnostics.all())
    j["diagnostics"].push_back(json_of(d));
  j["errors"] = diagnostics.errors();
  j["warnings"] = diagnostics.count(Severity::warning);
  // A source line may hold the very bytes that a diagnostic complains of.
  return j.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace strakebook::base
