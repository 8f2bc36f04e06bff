#include <set>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "helpers.h"
#include "strakebook/base/files.h"
#include "strakebook/base/yaml_tree.h"

using namespace strakebook;
using namespace strakebook::survey::testing;
using nlohmann::json;

namespace {

using Keys = std::set<std::string>;

base::YamlNode tree(const std::string &text) {
  base::Diagnostics found;
  auto node = base::parse_yaml(
      std::make_shared<const base::SourceFile>(base::SourceFile{"survey.yaml", text}), found);
  INFO(base::terminal_text(found));
  REQUIRE(found.ok());
  return node;
}

/// Every key that a schema knows, as a path; entries of lists and of maps of names are one step, "*".
void keys_of(const json &schema, const std::string &path, Keys &into) {
  if (schema.contains("anyOf"))
    for (const auto &one : schema.at("anyOf"))
      keys_of(one, path, into);
  if (schema.contains("items"))
    keys_of(schema.at("items"), path + "/*", into);
  if (schema.contains("additionalProperties") && schema.at("additionalProperties").is_object())
    keys_of(schema.at("additionalProperties"), path + "/*", into);
  if (!schema.contains("properties"))
    return;
  for (const auto &[key, inner] : schema.at("properties").items()) {
    into.insert(path + "/" + key);
    keys_of(inner, path + "/" + key, into);
  }
}

/// The keys of a file among those that a schema knows.
void keys_of(const base::YamlNode &node, const std::string &path, const Keys &known, Keys &into) {
  for (const auto &item : node.items)
    keys_of(item, path + "/*", known, into);
  for (const auto &entry : node.entries) {
    const bool own = known.contains(path + "/" + entry.key);
    if (own)
      into.insert(path + "/" + entry.key);
    keys_of(entry.value, path + "/" + (own ? entry.key : "*"), known, into);
  }
}

Keys schema_keys() {
  Keys keys;
  keys_of(json::parse(survey::schema_json()), "", keys);
  return keys;
}

std::string text_of(const std::filesystem::path &file) {
  base::Diagnostics found;
  return base::read_source(file, file.string(), {}, found)->text;
}

std::string without_remark_signs(const std::string &skeleton) {
  std::string out;
  for (std::size_t begin = 0; begin < skeleton.size();) {
    const auto end = skeleton.find('\n', begin) + 1;
    const auto line = skeleton.substr(begin, end - begin);
    const bool key = line.starts_with("# ") && line.find(":  # ") != std::string::npos;
    out += key ? line.substr(2) : line;
    begin = end;
  }
  return out;
}

} // namespace

TEST_CASE("the schema is JSON and knows the keys of the whole survey, and that survey uses every key") {
  const auto schema = json::parse(survey::schema_json());
  CHECK(schema.at("$schema") == "https://json-schema.org/draft/2020-12/schema");
  CHECK(schema.at("additionalProperties") == false);
  CHECK(schema.at("required") ==
        json{"strakebook", "house", "report", "vessel", "datum", "zones", "rows", "readings"});
  CHECK(schema.at("properties").at("answer").at("properties").at("refloat").at("enum").size() == 5);

  const auto known = schema_keys();
  Keys used;
  keys_of(tree(text_of(here / "whole/survey.yaml")), "", known, used);
  Keys unused;
  std::set_difference(known.begin(), known.end(), used.begin(), used.end(),
                      std::inserter(unused, unused.end()));
  // keys that stand for each other, and values that may carry their own source
  std::erase_if(unused,
                [](const std::string &key) { return key.ends_with("/value") || key.ends_with("/source"); });
  CHECK(unused == Keys{"/own-criteria/*/most-loss-percent", "/readings/lines", "/readings/file",
                       "/readings/coating-thickness", "/readings/form", "/readings/gauge", "/readings/inline", "/readings/marks",
                       "/readings/queried", "/readings/reduce", "/readings/rejected", "/readings/separator", "/readings/stations",
                       "/readings/surface", "/readings/unit", "/readings/*/lines"});
}

TEST_CASE("the empty survey is YAML that lacks values only") {
  Folder folder;
  const auto skeleton = survey::skeleton_yaml();
  tree(skeleton);
  for (const auto &text : {skeleton, without_remark_signs(skeleton)}) {
    const auto found = run(folder.write("survey.yaml", text)).found;
    INFO(base::terminal_text(found));
    CHECK(found.errors() > 20);
    for (const auto &d : found.all())
      CHECK((d.code == base::Code::empty_value || d.code == base::Code::missing_key));
  }
}

TEST_CASE("the empty survey has every key once, with help") {
  const auto known = schema_keys();
  Keys used;
  keys_of(tree(without_remark_signs(survey::skeleton_yaml())), "", known, used);
  for (const auto &key : known) {
    const bool set_as_map =
        key.starts_with("/readings/") && !key.starts_with("/readings/*"); // one set may stand without a list
    const bool sourced = key.ends_with("/value") || (key.ends_with("/source") && key != "/vessel/source");
    INFO(key);
    CHECK((set_as_map || sourced || used.contains(key)));
  }
}
