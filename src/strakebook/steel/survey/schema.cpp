#include <nlohmann/json.hpp>

#include "strakebook/steel/survey/fields.h"
#include "strakebook/steel/survey/reader.h"
#include "strakebook/steel/survey/readings.h"

/// The field table as a JSON Schema, for editors that check and complete as the surveyor writes.
namespace strakebook::survey {

using json = nlohmann::ordered_json;

namespace {

json scalar_schema(const Shape &shape, std::string_view choices) {
  auto words = choices.empty() ? shape.choices : split_choices(choices);
  if (words == std::vector<std::string>{"yes", "no"})
    return {{"enum", {"yes", "no", true, false}}};
  if (!words.empty())
    return {{"enum", words}};
  json schema{{"type", {"string", "number", "boolean"}}};
  if (!shape.pattern.empty())
    schema["pattern"] = shape.pattern;
  return schema;
}

json texts_schema() {
  return {{"type", "object"},
          {"minProperties", 1},
          {"additionalProperties", {{"type", {"string", "number", "boolean"}}}}};
}

json statements_schema(const Shape &shape) {
  auto one = texts_schema();
  one["propertyNames"] = {{"enum", shape.choices}};
  return {{"type", "array"}, {"minItems", 1}, {"items", one}};
}

json sourced_schema(const json &scalar) {
  const json with_source{{"type", "object"},
                         {"properties", {{"value", scalar}, {"source", {{"type", "string"}}}}},
                         {"required", {"value", "source"}},
                         {"additionalProperties", false}};
  return {{"anyOf", {scalar, with_source}}};
}

json leaf_schema(const Key &key, const Shape &shape) {
  const auto scalar = scalar_schema(shape, key.choices);
  const auto one = shape.sourced ? sourced_schema(scalar) : scalar;
  switch (shape.form) {
  case Shape::Form::scalar:
    return one;
  case Shape::Form::one_or_list:
    return {{"anyOf", {one, {{"type", "array"}, {"minItems", 1}, {"items", one}}}}};
  case Shape::Form::map:
    return texts_schema();
  case Shape::Form::statements:
    return statements_schema(shape);
  case Shape::Form::grid:
    return {{"type", "object"}, {"additionalProperties", texts_schema()}};
  }
  return {};
}

json empty_map() {
  return {{"type", "object"},
          {"properties", json::object()},
          {"required", json::array()},
          {"additionalProperties", false}};
}

class SchemaWriter : public Fields {
public:
  explicit SchemaWriter(json &map) : map_(map) {}
  void inherited_source(const Key &key) override { leaf(key, shape_of(Words{}, Rule::source), {}); }

protected:
  void leaf(const Key &key, const Shape &shape, const Store &) override { put(key, leaf_schema(key, shape)); }
  void map(const Key &key, const Body &body) override {
    auto inner = empty_map();
    SchemaWriter writer(inner);
    body(writer, {});
    put(key, std::move(inner));
  }
  void list(const Key &key, bool one_will_do, const Elements &elements) override {
    const auto one = element(elements);
    json several{{"type", "array"}, {"minItems", 1}, {"items", one}};
    put(key, one_will_do ? json{{"anyOf", {one, several}}} : std::move(several));
  }
  void named(const Key &key, Ids ids, const Elements &elements) override {
    json all{{"type", "object"}, {"minProperties", 1}, {"additionalProperties", element(elements)}};
    if (!ids.names)
      all["propertyNames"] = {{"pattern", pattern_of(ids.form)}};
    put(key, std::move(all));
  }

private:
  static json element(const Elements &elements) {
    auto one = empty_map();
    SchemaWriter writer(one);
    elements.add(writer, {});
    return one;
  }
  void put(const Key &key, json schema) {
    schema["description"] = key.help;
    map_["properties"][std::string(key.name)] = std::move(schema);
    if (key.need == Need::required)
      map_["required"].push_back(key.name);
  }

  json &map_;
};

} // namespace

std::string schema_json() {
  auto schema = empty_map();
  schema["$schema"] = "https://json-schema.org/draft/2020-12/schema";
  schema["title"] = "A survey of hull thickness, version " + std::to_string(format_version);
  SurveyFile nobody;
  SchemaWriter writer(schema);
  fields(writer, nobody);
  return schema.dump(2) + "\n";
}

} // namespace strakebook::survey
