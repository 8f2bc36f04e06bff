#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "strakebook/steel/survey/as_written.h"
#include "strakebook/steel/survey/values.h"

/// The field table: every key of the survey file, its help, its shape and the member it fills, written once
/// in fields_*.cpp and walked by the reader, the schema, the skeleton and the check of prose.
namespace strakebook::survey {

enum class Need { optional, required };

struct Key {
  std::string_view name;
  std::string_view help;
  Need need = Need::optional;
  Rule rule = Rule::none;
  std::string_view choices = {}; ///< "yes|no|no opinion": a closed list kept as text; empty: any
};
inline Key required(std::string_view name, std::string_view help, Rule rule = Rule::none,
                    std::string_view choices = {}) {
  return {name, help, Need::required, rule, choices};
}
inline Key maybe(std::string_view name, std::string_view help, Rule rule = Rule::none,
                 std::string_view choices = {}) {
  return {name, help, Need::optional, rule, choices};
}

/// The names of a map's entries: their spelling, and what they have to name, if anything.
struct Ids {
  IdForm form = IdForm::free;
  std::optional<Vocabulary> names = std::nullopt;
};

class Fields;
void fields(Fields &, Report &);
void fields(Fields &, Instructions &);
void fields(Fields &, Surveyor &);
void fields(Fields &, Vessel &);
void fields(Fields &, Conditions &);
void fields(Fields &, Answer &);
void fields(Fields &, IssueNote &);
void fields(Fields &, DoubtComponent &);
void fields(Fields &, Gauge &);
void fields(Fields &, Datum &);
void fields(Fields &, PittingExtent &);
void fields(Fields &, PitBlocks &);
void fields(Fields &, Zone &);
void fields(Fields &, Row &);
void fields(Fields &, Pit &);
void fields(Fields &, InnerReading &);
void fields(Fields &, Doubler &);
void fields(Fields &, Note &);
void fields(Fields &, NoneFound &);
void fields(Fields &, Photo &);
void fields(Fields &, CriterionUse &);
void fields(Fields &, policy::Criterion &);
void fields(Fields &, Decision &);
void fields(Fields &, ConflictAnswer &);
void fields(Fields &, Recommendation &);
void fields(Fields &, SteelworkItem &);
void fields(Fields &, CoatingAndAnodes &);
void fields(Fields &, CoatingScheme &);
void fields(Fields &, AnodesFitted &);
void fields(Fields &, AnodePlan &);
void fields(Fields &, AfloatFigures &);
void fields(Fields &, EarlierDatum &);
void fields(Fields &, EarlierReadings &);
void fields(Fields &, EarlierPit &);
void fields(Fields &, EarlierSurvey &);
void fields(Fields &, Limitation &);
void fields(Fields &, Recipient &);
void fields(Fields &, ChangeReason &);
void fields(Fields &, Told &);
void fields(Fields &, Amendment &);
void fields(Fields &, NewReading &);
void fields(Fields &, ClosedItem &);
void fields(Fields &, Addendum &);
void fields(Fields &, CarriedItem &);

/// One entry of a list or of a map of names, as it stands in the file.
struct Element {
  std::string id;
  base::SourceSpan span;
};
/// A sequence without its type: how to add one element, and how to walk those there are.
struct Elements {
  std::function<void(Fields &, const Element &)> add;
  /// Asks before each of them who shall walk it.
  std::function<void(const std::function<Fields &(const Element &)> &walker)> each;
  /// Looks at an entry before it is read; true: it was dealt with (a short form, or a refusal with advice).
  std::function<bool(Reading &, const std::string &id, const Node &, const base::SourceSpan &key)>
      first_look = {};
};

/// A visitor of the table. Derived classes say what they do with a value, a map, a list and a map of names.
class Fields {
public:
  using Store = std::function<void(Reading &, const Node &)>;
  using Body = std::function<void(Fields &, const base::SourceSpan &)>;
  using Check = std::function<void(Reading &, const Node &, const base::SourceSpan &)>;

  virtual ~Fields() = default;

  template <class T> void value(const Key &key, T &into) {
    leaf(key, shape_of(into, key.rule), [&](Reading &r, const Node &n) { read(r, n, key.rule, into); });
    each_words(into, [&](const Words &words) { prose(words); });
    each_written(into, [&](Written value) { written(key, std::move(value)); });
  }
  /// Text, or a list of texts, that names something.
  template <class T> void reference(const Key &key, Vocabulary kind, T &into) {
    leaf(key, shape_of(into, key.rule), [&](Reading &r, const Node &n) {
      if (!read(r, n, key.rule, into))
        return;
      const auto refer = [&](const Node &named) { r.references.push_back({kind, named.text, named.span}); };
      if (n.kind == Node::Kind::list)
        for (const auto &item : n.items)
          refer(item);
      else
        refer(n);
    });
    each_written(into, [&](Written value) { written(key, std::move(value)); });
  }
  template <class T> void group(const Key &key, T &into) {
    map(key, [&](Fields &inner, const base::SourceSpan &span) {
      if constexpr (requires { into.span; })
        into.span = span;
      fields(inner, into);
    });
  }
  template <class T> void group(const Key &key, std::optional<T> &into) {
    if (!into && only_what_is_there())
      return;
    map(key, [&](Fields &inner, const base::SourceSpan &span) {
      T value = into ? *into : T{}; // a reader finds nothing there yet; a walk finds what was written
      if constexpr (requires { value.span; })
        value.span = span;
      fields(inner, value);
      into = std::move(value);
    });
  }
  template <class T> void list_of(const Key &key, std::vector<T> &into, bool one_will_do = false) {
    list(key, one_will_do, elements(into, [](T &) -> std::string * { return nullptr; }));
  }
  template <class T> void by_id(const Key &key, Ids ids, std::vector<T> &into, std::string T::*id) {
    named(key, ids, elements(into, [id](T &element) { return &(element.*id); }));
  }
  template <class T>
  void by_id(const Key &key, Ids ids, std::vector<T> &into, std::string T::*id,
             decltype(Elements::first_look) look) {
    auto all = elements(into, [id](T &element) { return &(element.*id); });
    all.first_look = std::move(look);
    named(key, ids, all);
  }

  /// The `source:` that the values of this map inherit.
  virtual void inherited_source(const Key &) = 0;
  /// Where the value of a key stands; only a reader knows.
  virtual void place_of(std::string_view, base::SourceSpan &) {}
  /// Something that holds between the values of this map; only a reader runs it.
  virtual void check(const Check &) {}

protected:
  virtual void leaf(const Key &, const Shape &, const Store &) = 0;
  virtual void map(const Key &, const Body &) = 0;
  virtual void list(const Key &, bool one_will_do, const Elements &) = 0;
  virtual void named(const Key &, Ids, const Elements &) = 0;
  virtual void prose(const Words &) {}
  /// What stands there, as text; called only where something does.
  virtual void written(const Key &, Written) {}
  /// A walk of a survey that was read leaves out groups that were not written.
  virtual bool only_what_is_there() const { return false; }

private:
  template <class T, class IdOf> static Elements elements(std::vector<T> &into, IdOf id_of) {
    return {.add =
                [&into, id_of](Fields &inner, const Element &from) {
                  T element{};
                  if (auto *id = id_of(element))
                    *id = from.id;
                  if constexpr (requires { element.span; })
                    element.span = from.span;
                  fields(inner, element);
                  into.push_back(std::move(element));
                },
            .each =
                [&into, id_of](const std::function<Fields &(const Element &)> &walker) {
                  for (auto &element : into) {
                    Element stands;
                    if (const auto *id = id_of(element))
                      stands.id = *id;
                    if constexpr (requires { element.span; })
                      stands.span = element.span;
                    fields(walker(stands), element);
                  }
                }};
  }
};

} // namespace strakebook::survey
