#include "strakebook/steel/works/runs.h"

#include <map>
#include <optional>

namespace strakebook::works {

namespace {

using assess::Verdict;

/// What is known at one station of a row.
struct Post {
  Length station;
  bool planned = false;           ///< a mark was planned here
  bool shown = false;             ///< a mark here says something of the plate; what a pit keeps does not
  std::optional<Verdict> gravest; ///< absent: nothing here shows how the hull plate stands
  std::vector<Failing> failing;
};

void see(Post &post, const std::string &id, Length judged, const std::optional<assess::Standing> &standing) {
  if (!standing || standing->result.verdict == Verdict::not_applicable) return;
  const Verdict verdict = standing->result.verdict;
  if (!post.gravest || verdict > *post.gravest) post.gravest = verdict;
  if (verdict != Verdict::meets) post.failing.push_back({id, judged});
}

std::vector<Post> posts_of(const survey::Survey &survey, const assess::Assessment &assessment, const std::string &row) {
  std::map<Length, Post> at;
  for (std::size_t i = 0; i < survey.marks.size(); ++i) {
    const survey::Mark &mark = survey.marks[i];
    if (mark.row != row) continue;
    Post &post = at[mark.station.value];
    post.planned = true;
    post.shown = post.shown || (assessment.marks[i].standing && assessment.marks[i].standing->result.verdict != Verdict::not_applicable);
    see(post, mark.id(), assessment.marks[i].judged(), assessment.marks[i].standing);
  }
  for (std::size_t i = 0; i < survey.pits.size(); ++i)
    if (survey.pits[i].at.row == row)
      see(at[survey.pits[i].at.station.value], survey.pits[i].id, assessment.pits[i].judged(), assessment.pits[i].standing);
  std::vector<Post> out;
  for (auto &[station, post] : at) {
    post.station = station;
    out.push_back(std::move(post));
  }
  return out;
}

Verdict verdict_of(Area::Kind kind) { return kind == Area::Kind::falls_short ? Verdict::falls_short : Verdict::too_close; }

bool of_kind(const Post &post, Area::Kind kind) { return post.gravest == verdict_of(kind); }
bool ends(const Post &post, Area::Kind kind) { return post.shown && !of_kind(post, kind); }

Length half_way_down(Length a, Length b) { return Length::nanometres(a.nm() + (b - a).nm() / 2); } // a <= b
Length half_way_up(Length a, Length b) { return Length::nanometres(a.nm() + ((b - a).nm() + 1) / 2); }

/// From the first of its posts back to where it ends.
Length lower_end(const std::vector<Post> &posts, std::size_t first, Area::Kind kind) {
  Length last_planned = posts[first].station;
  for (std::size_t i = first; i-- > 0;) {
    if (ends(posts[i], kind)) return half_way_down(posts[i].station, posts[first].station);
    if (posts[i].planned) last_planned = posts[i].station;
  }
  return last_planned;
}

Length upper_end(const std::vector<Post> &posts, std::size_t last, Area::Kind kind) {
  Length last_planned = posts[last].station;
  for (std::size_t i = last + 1; i < posts.size(); ++i) {
    if (ends(posts[i], kind)) return half_way_up(posts[last].station, posts[i].station);
    if (posts[i].planned) last_planned = posts[i].station;
  }
  return last_planned;
}

Run run_between(const std::vector<Post> &posts, std::size_t row, Area::Kind kind, std::size_t first, std::size_t last) {
  Run run{.row = row, .kind = kind, .along = {lower_end(posts, first, kind), upper_end(posts, last, kind)}, .places = {}};
  for (const Post &post : posts) {
    if (post.station < run.along.from || run.along.to < post.station) continue;
    if (post.planned && !post.gravest) ++run.unseen;
    if (of_kind(post, kind)) run.places.insert(run.places.end(), post.failing.begin(), post.failing.end());
  }
  return run;
}

void add_runs(std::vector<Run> &to, const std::vector<Post> &posts, std::size_t row, Area::Kind kind) {
  std::optional<std::size_t> first;
  std::size_t last = 0;
  for (std::size_t i = 0; i <= posts.size(); ++i) {
    const bool over = i == posts.size() || ends(posts[i], kind);
    if (!over && of_kind(posts[i], kind)) {
      if (!first) first = i;
      last = i;
    }
    if (over && first) {
      to.push_back(run_between(posts, row, kind, *first, last));
      first.reset();
    }
  }
}

} // namespace

std::vector<Run> runs_of(const survey::Survey &survey, const assess::Assessment &assessment, std::size_t row) {
  const auto posts = posts_of(survey, assessment, survey.rows[row].id);
  std::vector<Run> out;
  for (const auto kind : {Area::Kind::falls_short, Area::Kind::too_close}) add_runs(out, posts, row, kind);
  return out;
}

} // namespace strakebook::works
