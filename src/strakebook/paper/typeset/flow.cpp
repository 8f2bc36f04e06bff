#include "strakebook/paper/typeset/flow.h"

#include <algorithm>
#include <utility>

#include "strakebook/paper/typeset/layout.h"
#include "strakebook/paper/typeset/outline.h"
#include "strakebook/paper/typeset/spacing.h"

namespace strakebook::typeset {
namespace {

class Flow {
public:
  explicit Flow(const Context &context) : context_(context) {}

  void add(const content::Section &section, std::size_t index) {
    if (pages_.empty() || section.starts_page || pages_.back().master != section.master)
      begin_page(section.master);
    context_.id = section_id(section, index);
    anchored_ = false;
    Resume at;
    while (at.index < section.blocks.size())
      at = page_filled(section, at);
    if (section.blocks.empty())
      add_anchor({});
    else
      after_ = spacing(section.blocks.back(), context_.style).after;
  }

  std::vector<SetPage> finished() { return std::move(pages_); }

private:
  /// Sets what the page still holds of the section; returns where to go on, on a new page if anything is
  /// left.
  Resume page_filled(const content::Section &section, const Resume &at) {
    const auto before = spacing(section.blocks[at.index], context_.style).before;
    const base::Pt gap = empty() ? base::Pt{} : std::max(after_, before);
    auto outcome = lay_sequence(section.blocks, at, region(gap), page_context());
    Resume rest{section.blocks.size(), {}};
    if (auto *next = std::get_if<NextPage>(&outcome)) {
      if (!empty())
        rest = at;
      else
        rest = without_too_large(at, *next);
    } else if (auto *part = std::get_if<Part>(&outcome)) {
      place(std::move(part->fragment), gap);
      rest = std::move(part->rest);
    } else if (auto *whole = std::get_if<Whole>(&outcome)) {
      place(std::move(whole->fragment), gap);
    }
    if (rest.index < section.blocks.size() && !empty())
      begin_page(section.master);
    return rest;
  }

  Resume without_too_large(const Resume &at, const NextPage &next) const {
    report_too_large(next);
    return {at.index + 1, {}};
  }

  const style::PageMaster &master() const { return style::master(context_.style, pages_.back().master); }
  bool empty() const { return y_.v == 0; }
  base::Point top(base::Pt gap) const { return {master().left, master().top + y_ + gap}; }

  Region region(base::Pt gap) const {
    const base::Pt full = style::body_height(master());
    return {style::body_width(master()), full - y_ - gap, full};
  }

  Context page_context() const {
    Context context = context_;
    context.page = static_cast<int>(pages_.size());
    return context;
  }

  void begin_page(const std::string &name) {
    const auto &look = style::master(context_.style, name);
    SetPage next;
    next.master = name;
    next.page.size = look.sheet;
    next.page.frames.push_back(
        {"body", {{look.left, look.top}, {style::body_width(look), style::body_height(look)}}});
    pages_.push_back(std::move(next));
    y_ = {};
    after_ = {};
  }

  void add_anchor(base::Pt gap) {
    if (!std::exchange(anchored_, true))
      pages_.back().page.items.push_back(anchor(context_.id, top(gap)));
  }

  void place(Fragment fragment, base::Pt gap) {
    add_anchor(gap);
    const base::Pt height = fragment.size.height;
    append(pages_.back().page.items, std::move(fragment), top(gap));
    y_ += gap + height;
  }

  void report_too_large(const NextPage &next) const {
    Context at = context_;
    at.origin = next.origin;
    report(at, base::Code::block_too_large,
           "\"" + next.id + "\" does not fit on an empty page: " + next.reason + " cannot be split further",
           "parts no higher than the body of a page", "shorter text or fewer lines in one place");
  }

  Context context_;
  std::vector<SetPage> pages_;
  base::Pt y_;            ///< used height of the last page's body
  bool anchored_ = false; ///< the section's id has its place
  base::Pt after_;        ///< white that the last block asks for below it
};

} // namespace

std::vector<SetPage> flow(const content::Document &document, const Context &context) {
  Flow pages(context);
  for (std::size_t i = 0; i < document.sections.size(); ++i)
    pages.add(document.sections[i], i);
  return pages.finished();
}

} // namespace strakebook::typeset
