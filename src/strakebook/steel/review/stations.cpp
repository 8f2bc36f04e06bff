#include <set>

#include "strakebook/base/decimal.h"
#include "strakebook/steel/review/findings.h"

namespace strakebook::review {

namespace {

class Beyond {
public:
  explicit Beyond(const Subject &subject) : subject_(subject), length_(subject.survey.vessel.length.length) {}

  /// A place that the hull does not reach; each name is told once.
  void see(const std::string &name, const base::Measured &station, const base::SourceSpan &span) {
    if (station.value <= length_.value || !told_.insert(name).second) return;
    found_.push_back(to_acknowledge(base::Code::station_beyond, nearest(span, subject_.survey.span), "beyond-length " + name,
                                    name + " lies at station " + station.raw + ", and the vessel is " + length_.raw + " long",
                                    "a station of " + base::mm_exact(length_.value, 0) + " mm from the datum at most"));
  }
  void see(const std::string &name, const survey::Reach &reach, const base::SourceSpan &span) {
    if (reach.to) see(name, *reach.to, nearest(reach.span, span));
    else if (reach.from) see(name, *reach.from, nearest(reach.span, span));
  }

  Findings found() { return std::move(found_); }

private:
  const Subject &subject_;
  const base::Measured &length_;
  std::set<std::string> told_;
  Findings found_;
};

} // namespace

Findings stations_beyond(const Subject &subject) {
  const survey::Survey &survey = subject.survey;
  Beyond beyond(subject);
  for (const auto &mark : survey.marks) beyond.see("row " + mark.row, mark.station, mark.span);
  for (const auto &pit : survey.pits) beyond.see(pit.id, pit.at.station, nearest(pit.at.span, pit.span));
  for (const auto &photo : survey.photos) beyond.see("photo " + photo.id, photo.at.station, nearest(photo.at.span, photo.span));
  for (const auto &doubler : survey.doublers) beyond.see(doubler.id, doubler.over, doubler.span);
  for (const auto &note : survey.notes) beyond.see(note.id, note.at, note.span);
  for (const auto &item : survey.recommendations) beyond.see("item " + item.id, item.at, item.span);
  for (const auto &item : survey.steelwork) beyond.see(item.id, item.at, item.span);
  for (const auto &limitation : survey.limitations) beyond.see("limitation " + limitation.id, limitation.at, limitation.span);
  for (const auto &none : survey.none_found) beyond.see("none-found " + none.what.text, none.at, none.what.span);
  return beyond.found();
}

} // namespace strakebook::review
