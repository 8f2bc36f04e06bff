#include <cstdio>

#include "strakebook/base/files.h"
#include "support/entry_sample.h"

/// Issues made-up files in place of a report, as the command does, and quickly: issue_files issue SURVEY. For the judge that ends it at
/// every one of its calls.
using namespace strakebook;

namespace {

sample::Issued made_up(const std::string &survey) {
  const auto number = survey.find("number: ") + 8;
  const int issue = survey.find("issue: 2\n") != survey.npos ? 2 : 1;
  auto made = sample::issued(survey.substr(number, survey.find('\n', number) - number), issue, std::string(100000, 'x') + std::to_string(issue));
  for (const char *path : {"inputs/survey.yaml", "inputs/readings/hull.csv"}) {
    made.files[path] = path;
    made.entry.beside.push_back(sample::kept(path, path));
  }
  return made;
}

bool issue_it(const std::filesystem::path &survey, base::Diagnostics &sink) {
  const auto text = base::read_file(survey, base::most_source_bytes, {}, sink);
  if (!text) return false;
  const auto made = made_up(*text);
  auto issuing = issue::Issuing::begin(survey.parent_path(), sink);
  if (!issuing) return false;
  const auto *there = issuing->current().of(made.entry.report, made.entry.issue, 0);
  return there ? *there == made.entry : issuing->commit(made.entry, made.files, sink);
}

} // namespace

int main(int count, char **words) {
  base::Diagnostics sink;
  if (count == 3 && issue_it(words[2], sink)) return 0;
  std::fputs(base::terminal_text(sink).c_str(), stderr);
  return 3;
}
