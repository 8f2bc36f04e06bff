#include "strakebook/paper/typeset/fragment.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace strakebook::typeset {
namespace {

struct Mover {
  base::Point by;
  void operator()(page::Run &run) const { run.origin = run.origin + by; }
  void operator()(page::Path &path) const {
    for (auto &step : path.steps)
      std::visit(*this, step);
  }
  void operator()(page::Picture &picture) const { picture.box.at = picture.box.at + by; }
  void operator()(page::Anchor &anchor) const { anchor.at = anchor.at + by; }
  void operator()(page::Link &link) const { link.box.at = link.box.at + by; }
  void operator()(page::Move &step) const { step.to = step.to + by; }
  void operator()(page::Line &step) const { step.to = step.to + by; }
  void operator()(page::Curve &step) const {
    step.c1 = step.c1 + by;
    step.c2 = step.c2 + by;
    step.to = step.to + by;
  }
  void operator()(page::Close &) const {}
};

} // namespace

void translate(page::Item &item, base::Point by) { std::visit(Mover{by}, item.what); }

void append(std::vector<page::Item> &out, Fragment part, base::Point at) {
  for (auto &item : part.items)
    translate(item, at);
  out.insert(out.end(), std::make_move_iterator(part.items.begin()),
             std::make_move_iterator(part.items.end()));
}

void stack(Fragment &above, Fragment below, base::Pt gap) {
  const bool first = above.size.height.v == 0 && above.items.empty();
  const base::Pt top = first ? base::Pt{} : above.size.height + gap;
  if (first)
    above.first_baseline = below.first_baseline;
  above.size.width = std::max(above.size.width, below.size.width);
  above.size.height = top + below.size.height;
  append(above.items, std::move(below), {base::Pt{}, top});
}

page::Colour colour(const style::Tone &tone) { return {tone.r, tone.g, tone.b}; }

page::Item filled_box(const base::Rect &box, page::Colour fill) {
  page::Path path;
  path.steps = {page::Move{box.at}, page::Line{{box.right(), box.at.y}},
                page::Line{{box.right(), box.bottom()}}, page::Line{{box.at.x, box.bottom()}}, page::Close{}};
  path.fill = fill;
  return {{}, {}, std::move(path)};
}

page::Item rule(base::Pt x0, base::Pt x1, base::Pt y, base::Pt width, page::Colour colour,
                const std::vector<base::Pt> &dash) {
  page::Path path;
  path.steps = {page::Move{{x0, y}}, page::Line{{x1, y}}};
  path.stroke = page::Stroke{width, colour, dash};
  return {{}, {}, std::move(path)};
}

page::Item presence(const page::TagPath &tag, const std::string &id) { return {tag, id, page::Path{}}; }

page::Item anchor(const std::string &id, base::Point at) {
  return {{}, id, page::Anchor{at}};
}

} // namespace strakebook::typeset
