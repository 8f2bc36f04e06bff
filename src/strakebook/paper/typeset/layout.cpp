#include "strakebook/paper/typeset/layout.h"

#include <utility>

#include "strakebook/paper/typeset/blocks.h"
#include "strakebook/paper/typeset/change_bar.h"
#include "strakebook/paper/typeset/figure.h"
#include "strakebook/paper/typeset/photo.h"
#include "strakebook/paper/typeset/table.h"

namespace strakebook::typeset {
namespace {

struct Layer {
  const Resume &from;
  const Region &region;
  const Context &context;

  Outcome operator()(const content::Heading &b) const { return lay_heading(b, region, context); }
  Outcome operator()(const content::Paragraph &b) const { return lay_paragraph(b, from, region, context); }
  Outcome operator()(const content::KeyValues &b) const { return lay_key_values(b, from, region, context); }
  Outcome operator()(const content::List &b) const { return lay_list(b, from, region, context); }
  Outcome operator()(const content::Table &b) const { return lay_table(b, from, region, context); }
  Outcome operator()(const content::Figure &b) const { return lay_figure(b, from, region, context); }
  Outcome operator()(const content::Photo &b) const { return lay_photo(b, region, context); }
  Outcome operator()(const content::Columns &b) const { return lay_columns(b, from, region, context); }
  Outcome operator()(const content::Together &b) const { return lay_together(b, from, region, context); }
  Outcome operator()(const content::Rule &b) const { return lay_rule(b, region, context); }
  Outcome operator()(const content::Contents &b) const { return lay_contents(b, from, region, context); }
  Outcome operator()(const content::EndMark &b) const { return lay_end_mark(b, region, context); }
  // Spaces and page breaks are read by the sequence that holds them.
  Outcome operator()(const content::Space &) const { return Nothing{}; }
  Outcome operator()(const content::PageBreak &) const { return Nothing{}; }
};

/// Listed with the tables or figures, so that a line of the list leads to it.
bool labelled(const content::Block &block) {
  const auto *table = std::get_if<content::Table>(&block.what);
  const auto *figure = std::get_if<content::Figure>(&block.what);
  return (table && !table->label.empty()) || (figure && !figure->label.empty());
}

void finish(Fragment &fragment, const content::Block &block, bool at_start, const Context &context) {
  const bool is_target = !block.id.empty() || std::holds_alternative<content::Heading>(block.what) || labelled(block);
  if (at_start && is_target)
    fragment.items.insert(fragment.items.begin(), anchor(context.id, {}));
  if (block.changed)
    fragment.items.push_back(change_bar({}, fragment.size.height, context));
}

} // namespace

Outcome whole_or_next(Fragment fragment, const Region &region, const std::string &reason) {
  if (!region.holds(fragment.size.height))
    return NextPage{reason, {}, {}};
  return Whole{std::move(fragment)};
}

Outcome lay(const content::Block &block, const Resume &from, const Region &region, const Context &context) {
  Outcome outcome = std::visit(Layer{from, region, context}, block.what);
  if (auto *whole = std::get_if<Whole>(&outcome))
    finish(whole->fragment, block, from.at_start(), context);
  else if (auto *part = std::get_if<Part>(&outcome))
    finish(part->fragment, block, from.at_start(), context);
  else if (auto *next = std::get_if<NextPage>(&outcome); next && next->id.empty()) {
    next->id = context.id;
    next->origin = context.origin;
  }
  return outcome;
}

} // namespace strakebook::typeset
