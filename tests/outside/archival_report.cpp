#include <cstdio>
#include <filesystem>

#include "strakebook/paper/output/output.h"
#include "strakebook/report.h"

/// archival_report SURVEY PDF: the report of a survey in the archival kind, for judges of PDF/A. No command promises it.
int main(int count, char **given) {
  if (count != 3)
    return 2;
  using namespace strakebook;
  base::Diagnostics sink;
  const auto resources = installed_resources();
  const auto the_case = open_case(std::filesystem::path(given[1]), resources, sink);
  if (!the_case || !sink.ok())
    return 1;
  const auto pages = set_pages(*the_case, resources, sink);
  if (!pages)
    return 1;
  const auto bytes = output::pdf(pages->pages, the_case->images, sink, output::PdfKind::archival);
  if (bytes.empty())
    return 1;
  auto *file = std::fopen(given[2], "wb");
  if (file == nullptr)
    return 3;
  const bool whole = std::fwrite(bytes.data(), 1, bytes.size(), file) == bytes.size();
  return std::fclose(file) == 0 && whole ? 0 : 3;
}
