#include "strakebook/paper/output/reading_text.h"

#include <cmath>
#include <set>
#include <utility>

namespace strakebook::output {

namespace {

constexpr double touching = 0.01; // points: the runs of a line join without a gap

base::Point end_of(const page::Run &run) {
  base::Point end = run.origin;
  for (const auto &glyph : run.glyphs) (run.upright ? end.x : end.y) += run.upright ? glyph.advance : -glyph.advance;
  return end;
}

bool in_caption(const page::TagPath &tag) {
  return tag && (tag->role == page::Role::caption || in_caption(tag->parent));
}

class Reader {
public:
  explicit Reader(const Spoken &spoken) : spoken_(spoken) {}

  void read(const page::Item &item) {
    const auto *run = std::get_if<page::Run>(&item.what);
    const auto words = spoken_.find(item.id);
    if (words != spoken_.end() && !in_caption(item.tag)) say_once(*words);
    else if (run) say(*run);
  }
  std::string finished() { return std::move(text_); }

private:
  void say_once(const Spoken::value_type &words) {
    if (!said_.insert(words.first).second) return;
    space();
    text_ += words.second;
    goes_on_ = false;
  }

  void say(const page::Run &run) {
    const bool joined = goes_on_ && std::abs(run.origin.x.v - end_.x.v) < touching && std::abs(run.origin.y.v - end_.y.v) < touching;
    if (!joined) space();
    text_ += run.text;
    end_ = end_of(run);
    goes_on_ = true;
  }

  void space() {
    if (!text_.empty() && text_.back() != ' ') text_ += ' ';
  }

  const Spoken &spoken_;
  std::set<std::string> said_;
  std::string text_;
  base::Point end_;
  bool goes_on_ = false;
};

} // namespace

std::string reading_text(const page::Page &page, const Spoken &spoken) {
  Reader reader(spoken);
  for (const auto &item : page.items) reader.read(item);
  return reader.finished();
}

} // namespace strakebook::output
