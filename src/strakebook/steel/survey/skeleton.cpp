#include <fmt/format.h>

#include "strakebook/steel/survey/fields.h"
#include "strakebook/steel/survey/reader.h"
#include "strakebook/steel/survey/readings.h"

/// The field table as an empty survey: required keys stand with nothing in them, the others behind a '#'.
namespace strakebook::survey {

namespace {

class SkeletonWriter : public Fields {
public:
  explicit SkeletonWriter(std::string &out, int depth = 0, bool quiet = false, std::string_view bullet = {})
      : out_(out), depth_(depth), quiet_(quiet), bullet_(bullet) {}
  void inherited_source(const Key &key) override { leaf(key, shape_of(Words{}, Rule::source), {}); }

protected:
  void leaf(const Key &key, const Shape &shape, const Store &) override {
    std::string remark(key.help);
    const auto choices = key.choices.empty() ? shape.choices : split_choices(key.choices);
    if (shape.form != Shape::Form::statements && !choices.empty())
      remark += ": " + base::joined(choices, " | ");
    else if (!shape.example.empty())
      remark += "; e.g. " + shape.example;
    line(key, remark);
  }
  void map(const Key &key, const Body &body) override {
    line(key, key.help);
    SkeletonWriter inner(out_, depth_ + 1, quiet(key));
    body(inner, {});
  }
  void list(const Key &key, bool, const Elements &elements) override {
    line(key, key.help);
    SkeletonWriter inner(out_, depth_ + 2, quiet(key), "- ");
    elements.add(inner, {});
  }
  void named(const Key &key, Ids ids, const Elements &elements) override {
    line(key, key.help);
    const auto example = ids.names == Vocabulary::criterion ? "absolute-4.0" : example_of(ids.form);
    write(quiet(key), depth_ + 1, std::string(example) + ":", "one such entry for each");
    SkeletonWriter inner(out_, depth_ + 2, quiet(key));
    elements.add(inner, {});
  }

private:
  bool quiet(const Key &key) const { return quiet_ || key.need == Need::optional; }

  void line(const Key &key, std::string_view remark) {
    if (depth_ == 0)
      out_ += "\n";
    write(quiet(key), depth_, std::string(key.name) + ":", remark);
  }
  /// The first line of an entry of a list carries the dash, even before a key that is left out.
  void write(bool quiet, int depth, const std::string &text, std::string_view remark) {
    std::string indent(static_cast<std::size_t>(depth) * 2, ' ');
    if (!bullet_.empty())
      indent.replace(indent.size() - bullet_.size(), bullet_.size(), bullet_);
    if (!bullet_.empty() && quiet && !quiet_)
      indent.append("\n").append(static_cast<std::size_t>(depth) * 2, ' ');
    bullet_ = {};
    const auto begin = indent.find_last_of('\n') + 1;
    if (quiet)
      indent.insert(begin, "# ");
    out_ += fmt::format("{}{}  # {}\n", indent, text, remark);
  }

  std::string &out_;
  int depth_;
  bool quiet_;
  std::string_view bullet_;
};

} // namespace

std::string skeleton_yaml() {
  std::string out = "# An empty survey. Fill in what stands after each colon; take the # away from what you "
                    "need, and leave out the rest.\n"
                    "# A bare length is in mm, a station in the datum's unit. Decimals have a point. Nothing "
                    "may be left empty.\n";
  SurveyFile nobody;
  SkeletonWriter writer(out);
  fields(writer, nobody);
  return out;
}

} // namespace strakebook::survey
