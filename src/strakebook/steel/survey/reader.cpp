#include "strakebook/steel/survey/reader.h"

#include <fmt/format.h>

#include <algorithm>

#include "strakebook/base/digest.h"
#include "strakebook/base/yaml_tree.h"
#include "strakebook/steel/survey/field_reader.h"
#include "strakebook/steel/survey/readings.h"
#include "strakebook/steel/survey/references.h"

namespace strakebook::survey {

using base::Code;

namespace {

struct Parsed {
  base::SourcePtr file;
  base::YamlNode root;
  base::SourceSpan top; ///< the file's first line
};

/// The file as a map; nullopt when there is nothing to read against the field table.
std::optional<Parsed> parse(const base::FileInFolder &named, base::Diagnostics &sink) {
  const auto file = named.folder.source(named.name, {}, sink);
  if (!file)
    return std::nullopt;
  Parsed parsed{file, base::parse_yaml(file, sink), {file, 1, 1, 1}};
  const auto broken = [](const base::Diagnostic &d) {
    return d.code != Code::yaml_duplicate_key && d.code != Code::yaml_forbidden;
  };
  if (std::any_of(sink.all().begin(), sink.all().end(), broken))
    return std::nullopt;
  if (parsed.root.kind == base::YamlNode::Kind::map)
    return parsed;
  sink.add({.code = Code::wrong_kind,
            .span = parsed.top,
            .message = "the file is not a survey",
            .expected = "a map of keys and values",
            .write = "strakebook: 1"});
  return std::nullopt;
}

/// A later version may mean other things by the same keys, so nothing else is read from it.
bool version_is_ours(Reading &reading, const Parsed &parsed) {
  const auto *version = parsed.root.find("strakebook");
  if (!version || version->kind != base::YamlNode::Kind::scalar)
    return true; // the table reports it
  if (version->text == std::to_string(format_version))
    return true;
  reading.error(Code::bad_version, version->span,
                fmt::format("\"{}\" is not a version that is read here", version->text),
                fmt::format("version {}", format_version), fmt::format("strakebook: {}", format_version));
  return false;
}

} // namespace

std::optional<base::Located<std::string>> house_named(const base::FileInFolder &file, base::Diagnostics &sink) {
  base::Diagnostics found; // handed over only if the house cannot be named: read_survey reports the rest
  const auto parsed = parse(file, found);
  const auto *house = parsed ? parsed->root.find("house") : nullptr;
  if (house && house->kind == base::YamlNode::Kind::scalar)
    return base::Located<std::string>{house->text, house->span};
  if (parsed)
    found.add({.code = house ? Code::wrong_kind : Code::missing_key,
               .span = house ? house->span : parsed->top,
               .message = house ? "house does not name a layout" : "house is missing",
               .expected = "the layout: house wording, criteria and style",
               .write = "house: base"});
  hand_over(found, parsed ? parsed->file : nullptr, sink);
  return std::nullopt;
}

Survey read_survey(const base::FileInFolder &file, const policy::Policy &policy, base::Diagnostics &sink) {
  SurveyFile as_written;
  auto &survey = as_written.survey;
  base::Diagnostics found;
  Reading reading{.sink = found, .survey = survey, .source = {}, .references = {}, .afterwards = {}};
  const auto parsed = parse(file, found);
  if (parsed && version_is_ours(reading, *parsed)) {
    survey.span = parsed->top;
    survey.inputs.push_back({.kind = "survey",
                             .path = file.name,
                             .digest = base::sha256_hex(parsed->file->text),
                             .bytes = parsed->file->text.size(),
                             .lines = 0,
                             .marks = 0});
    FieldReader table(reading, parsed->root, parsed->top, {});
    fields(table, as_written);
    table.refuse_unknown_keys();
    take_readings(reading, as_written.readings, file.folder, survey);
    take_earlier(reading, file.folder, survey);
    for (const auto &report : reading.afterwards)
      report(reading);
    resolve(reading, policy);
  }
  hand_over(found, parsed ? parsed->file : nullptr, sink);
  return std::move(as_written.survey);
}

} // namespace strakebook::survey
