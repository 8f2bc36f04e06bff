#include "cli/assessment_text.h"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

#include "strakebook/base/decimal.h"

namespace strakebook::cli {

namespace {

using base::mm_exact;

std::string_view word(assess::Verdict verdict) {
  switch (verdict) {
  case assess::Verdict::meets: return "meets";
  case assess::Verdict::too_close: return "too close to call";
  case assess::Verdict::falls_short: return "falls short";
  case assess::Verdict::not_applicable: break;
  }
  return "not applicable";
}

std::string counts(const assess::Count &count) {
  int not_read = 0;
  for (const auto &[status, n] : count.not_read) not_read += n;
  return fmt::format("{} planned = {} read + {} rejected + {} not read; {} used, {} on doublers", count.planned, count.read,
                     count.rejected, not_read, count.used, count.doubler);
}

void add_subject(std::string &out, const assess::Subject &subject, const assess::Assessment &assessment) {
  auto end = std::back_inserter(out);
  const std::string low = subject.low ? fmt::format(", judged on the low side by {} mm", mm_exact(*subject.low)) : "";
  fmt::format_to(end, "  {} {}: {} mm remaining{}, doubt {} mm{}\n",
                 subject.kind == assess::Subject::Kind::pit ? "pit" : "plate", subject.id, mm_exact(subject.remaining), low,
                 base::mm_text(subject.band_nm, 4), subject.indicative ? ", indicative" : "");
  for (std::size_t i = 0; i < subject.results.size(); ++i) {
    const auto &result = subject.results[i];
    const auto &name = assessment.criteria[i].name;
    if (result.verdict == assess::Verdict::not_applicable)
      fmt::format_to(end, "    {:<32} not applicable: {}\n", name, result.why_not);
    else
      fmt::format_to(end, "    {:<32} limit {:>9}  margin {:>9}  {}{}{}\n", name, mm_exact(result.limit, 2),
                     mm_exact(result.margin, 2), word(result.verdict), result.governs ? " (governs)" : "",
                     result.substantial ? "; substantial corrosion" : "");
  }
}

void add_zone(std::string &out, const survey::Zone &zone, const assess::ZoneResult &result,
              const assess::Assessment &assessment) {
  auto end = std::back_inserter(out);
  fmt::format_to(end, "\nzone {} ({})\n  {}\n", zone.id, zone.name.text, counts(result.count));
  if (result.too_few) out += "  too few readings for an opinion under the house's policy\n";
  for (const auto &subject : result.subjects) add_subject(out, subject, assessment);
  if (result.conflict) out += "  the criteria contradict each other here\n";
  if (!result.rung.empty())
    fmt::format_to(end, "  ladder row {}: suggests {}\n", result.rung, fmt::join(result.suggested, ", "));
}

} // namespace

std::string assessment_text(const survey::Survey &survey, const assess::Assessment &assessment) {
  std::string out = fmt::format("{}: {}\nworst place judged by {} mm at {}\n", survey.vessel.name.text,
                                counts(assessment.coverage), mm_exact(assessment.worst_remaining), assessment.worst);
  for (std::size_t i = 0; i < assessment.zones.size(); ++i) add_zone(out, survey.zones[i], assessment.zones[i], assessment);
  return out;
}

} // namespace strakebook::cli
