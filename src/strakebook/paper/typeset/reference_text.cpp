#include "strakebook/paper/typeset/reference_text.h"

#include <string_view>

#include "strakebook/base/text.h"

namespace strakebook::typeset {
namespace {

constexpr std::string_view no_break_space = "\xC2\xA0";

/// "Table 4, p. 9": the parts stay whole, the line may end after the comma.
std::string held_together(std::string_view text) {
  std::string held;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool may_break = i > 0 && text[i - 1] == ',';
    if (text[i] == ' ' && !may_break)
      held += no_break_space;
    else
      held += text[i];
  }
  return held;
}

bool landed(const content::Reference &reference, const Context &context) {
  return context.places.pages.find(reference.target) != context.places.pages.end();
}

std::string page_of(const content::Reference &reference, const Context &context) {
  if (!context.places.known)
    return "00";
  return landed(reference, context) ? std::to_string(context.places.pages.find(reference.target)->second)
                                    : "?";
}

std::string label_of(const content::Reference &reference, const Context &context) {
  const auto it = context.names.find(reference.target);
  if (it != context.names.end())
    return it->second;
  report(context, base::Code::dangling_reference,
         "a reference asks for the label of \"" + reference.target + "\", which has none");
  return "?";
}

/// The pattern around the label is held together, the label itself only where it is one ("Table 4").
std::string with_page(const std::string &label, const content::Reference &reference, const Context &context) {
  const base::Fill fills[] = {{"label", "\x01"}, {"page", page_of(reference, context)}};
  std::string text = held_together(base::filled(context.labels.label_page, fills));
  const auto at = text.find('\x01');
  return at == std::string::npos ? text : text.replace(at, 1, label);
}

} // namespace

std::string reference_text(const content::Reference &reference, const Context &context) {
  using Form = content::Reference::Form;
  if (context.places.known && !landed(reference, context))
    report(context, base::Code::dangling_reference,
           "a reference leads to \"" + reference.target + "\", which is nowhere in the document");
  switch (reference.form) {
  case Form::page: {
    const base::Fill fills[] = {{"page", page_of(reference, context)}};
    return held_together(base::filled(context.labels.page_short, fills));
  }
  case Form::label:
    return held_together(label_of(reference, context));
  case Form::label_page:
    return with_page(held_together(label_of(reference, context)), reference, context);
  case Form::text:
    return reference.shown;
  case Form::text_page:
    return with_page(reference.shown, reference, context);
  }
  return reference.shown;
}

} // namespace strakebook::typeset
