#include "strakebook/steel/survey/written.h"

#include <algorithm>
#include <iterator>

#include "strakebook/base/text.h"
#include "strakebook/steel/survey/fields.h"
#include "strakebook/steel/survey/readings.h"

namespace strakebook::survey {

namespace {

class WrittenWalk : public Fields {
public:
  std::vector<WrittenThing> things;

  void inherited_source(const Key &) override {}

protected:
  void leaf(const Key &, const Shape &, const Store &) override {}
  bool only_what_is_there() const override { return true; }

  void map(const Key &key, const Body &body) override {
    const Step step(*this, key, {});
    body(*this, {});
  }
  void named(const Key &key, Ids, const Elements &elements) override {
    std::optional<Step> step;
    elements.each([&](const Element &element) -> Fields & {
      step.reset();
      step.emplace(*this, key, element);
      return *this;
    });
  }
  void list(const Key &key, bool, const Elements &elements) override;

  void written(const Key &key, Written value) override {
    if (depth_ == 0 && (things.empty() || things.back().key != key.name || !things.back().id.empty()))
      things.push_back({.key = std::string(key.name), .id = {}, .span = value.span, .fields = {}});
    // At the top of the file the key names the thing, and a name below it the field.
    std::string name = depth_ == 0 && !value.name.empty() ? value.name : prefix_ + std::string(key.name);
    if (depth_ > 0 && !value.name.empty())
      name += " " + value.name;
    things.back().fields.push_back({std::move(name), std::move(value.parts), value.apart, value.span});
  }

private:
  /// Inside a map: at the top of the file it is a thing of its own, further down part of a field's name.
  class Step {
  public:
    Step(WrittenWalk &walk, const Key &key, const Element &element) : walk_(walk), outside_(walk.prefix_) {
      if (walk_.depth_++ == 0)
        walk_.things.push_back({.key = std::string(key.name), .id = element.id, .span = element.span, .fields = {}});
      else
        walk_.prefix_ += std::string(key.name) + " " + (element.id.empty() ? "" : element.id + " ");
    }
    ~Step() {
      --walk_.depth_;
      walk_.prefix_ = std::move(outside_);
    }
    Step(const Step &) = delete;
    Step &operator=(const Step &) = delete;

  private:
    WrittenWalk &walk_;
    std::string outside_;
  };

  int depth_ = 0;
  std::string prefix_;
};

std::string as_one_text(const WrittenThing &entry) {
  std::vector<std::string> parts;
  for (const auto &field : entry.fields)
    parts.push_back(field.name + ": " + text_of(field));
  return base::joined(parts, ", ");
}

/// Entries without names cannot be told from each other but by what they say, so each is one text.
void WrittenWalk::list(const Key &key, bool, const Elements &elements) {
  WrittenWalk entries;
  entries.depth_ = 1;
  elements.each([&](const Element &element) -> Fields & {
    entries.things.push_back({.key = {}, .id = {}, .span = element.span, .fields = {}});
    return entries;
  });
  if (entries.things.empty())
    return;
  Written all{.apart = true, .span = entries.things.front().span};
  std::ranges::transform(entries.things, std::back_inserter(all.parts), as_one_text);
  written(key, std::move(all));
}

} // namespace

std::string text_of(const WrittenField &field) { return base::joined(field.parts, field.apart ? "; " : ", "); }

std::vector<WrittenThing> things_written(const Survey &survey) {
  // The table hands out places to write to, so it walks a copy.
  SurveyFile copy{.version = 0, .survey = survey, .readings = {}};
  WrittenWalk walk;
  fields(walk, copy);
  return std::move(walk.things);
}

} // namespace strakebook::survey
