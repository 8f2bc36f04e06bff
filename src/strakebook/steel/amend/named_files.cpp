#include "strakebook/steel/amend/named_files.h"

#include <algorithm>

#include "strakebook/steel/amend/marks.h"

namespace strakebook::amend {

using survey::WrittenThing;

namespace {

void add(WrittenThing &thing, std::string name, std::string text, const base::SourceSpan &span) {
  thing.fields.push_back({.name = std::move(name), .parts = {std::move(text)}, .apart = false, .span = span});
}

void add_picture(WrittenThing &thing, const Edition &edition) {
  const auto file = std::ranges::find(thing.fields, "file", &survey::WrittenField::name);
  if (file == thing.fields.end()) return;
  const auto read = std::ranges::find_if(edition.inputs, [&](const base::InputFile &input) {
    return input.kind == "photograph" && input.path == file->parts.front();
  });
  if (read != edition.inputs.end()) add(thing, "picture", read->digest, file->span);
}

void add_layouts(WrittenThing &thing, const Edition &edition) {
  for (const auto &input : edition.inputs)
    if (input.kind == "layout") add(thing, input.path, input.digest, thing.span);
}

void add_readings(WrittenThing &thing, const Edition &edition) {
  const auto earlier = std::ranges::find(edition.survey.earlier, thing.id, &survey::EarlierSurvey::id);
  if (earlier == edition.survey.earlier.end()) return;
  for (const auto &mark : earlier->marks) add(thing, mark.id(), cell_text(mark), mark.span);
}

} // namespace

void add_from_files(WrittenThing &thing, const Edition &edition) {
  if (thing.key == "photos") add_picture(thing, edition);
  if (thing.key == "earlier-surveys") add_readings(thing, edition);
  if (thing.key == "house") add_layouts(thing, edition);
}

} // namespace strakebook::amend
