#pragma once

#include "strakebook/steel/survey/fields.h"

namespace strakebook::survey {

/// Walks the field table over one map of the file, strictly.
class FieldReader : public Fields {
public:
  /// `where` is what a missing key is reported at; `path` names the map in messages ("vessel", "pits P3").
  FieldReader(Reading &reading, const Node &map, base::SourceSpan where, std::string path);
  ~FieldReader() override;
  FieldReader(const FieldReader &) = delete;
  FieldReader &operator=(const FieldReader &) = delete;

  /// Reports every key of the map that the table did not ask for.
  void refuse_unknown_keys();

  void inherited_source(const Key &) override;
  void place_of(std::string_view, base::SourceSpan &) override;
  void check(const Check &) override;

protected:
  void leaf(const Key &, const Shape &, const Store &) override;
  void map(const Key &, const Body &) override;
  void list(const Key &, bool one_will_do, const Elements &) override;
  void named(const Key &, Ids, const Elements &) override;

private:
  /// The value of a key with something in it; otherwise reports what is missing and returns nullptr.
  const Node::Entry *take(const Key &key, std::string_view example);
  bool is_map(const Node &node, std::string_view expected);
  void element(const Node &map, const base::SourceSpan &where, const std::string &path, const std::string &id,
               const Elements &);

  Reading &reading_;
  const Node &map_;
  base::SourceSpan where_;
  std::string path_;
  std::vector<std::string> known_;
  std::optional<base::Provenance> outer_source_;
};

} // namespace strakebook::survey
