#pragma once

#include <set>
#include <stdexcept>
#include <string>
#include <vector>

#include "strakebook/base/digest.h"
#include "strakebook/issue/verify.h"
#include "support/small_pdf.h"

/// A report small enough for each of its bytes to be turned: two pages that are a function of their inputs, as an issued report is.
namespace small_report {

namespace base = strakebook::base;
namespace issue = strakebook::issue;

inline issue::Makers makers() { return {"strakebook 0.1.0 (sources 11aa22bb)", {"zlib 1.2.13"}}; }

inline base::FileSet inputs(const std::string &reading = "4.6") {
  return {{"readings.csv", "mark,mm\nSW 7," + reading + "\n"}, {"survey.yaml", "vessel: {name: Small}\n"}};
}

inline std::string hexadecimal(std::string_view text) {
  std::string out;
  for (const char letter : text) {
    out += "00";
    out += "0123456789abcdef"[static_cast<unsigned char>(letter) >> 4];
    out += "0123456789abcdef"[letter & 15];
  }
  return out;
}

/// Codes are the letters themselves; those that no page has are left out.
inline std::string to_unicode(const std::vector<std::string> &pages) {
  std::set<char> letters;
  for (const auto &words : pages) letters.insert(words.begin(), words.end());
  std::string map;
  for (const char letter : letters) {
    const auto code = hexadecimal(std::string(1, letter));
    map += "<" + code + "> <" + code + ">\n";
  }
  return "1 begincodespacerange\n<0000> <ffff>\nendcodespacerange\n" + std::to_string(letters.size()) + " beginbfchar\n" + map + "endbfchar\n";
}

/// A page's words in two pieces, as kerning cuts them.
inline std::string page_content(const std::string &words) {
  const auto half = words.size() / 2;
  return "BT /F0 9 Tf 20 200 Td [<" + hexadecimal(words.substr(0, half)) + "> -35 <" + hexadecimal(words.substr(half)) + ">] TJ ET";
}

inline std::string reference(std::size_t object) { return std::to_string(object) + " 0 R"; }

/// Files attached, the list of them among them.
inline std::string pdf_with(const std::vector<std::string> &pages, const base::FileSet &attached) {
  using support::pdf_stream;
  std::vector<std::string> objects(5);
  std::string kids, names;
  for (const auto &words : pages) {
    objects.push_back("<<\n/Type /Page\n/Parent 2 0 R\n/MediaBox [0 0 300 400]\n/Resources <<\n/Font <<\n/F0 4 0 R\n>>\n>>\n/Contents " +
                      reference(objects.size() + 2) + "\n>>");
    kids += reference(objects.size()) + " ";
    objects.push_back(pdf_stream("", page_content(words)));
  }
  for (const auto &[name, bytes] : attached) {
    objects.push_back("<<\n/Type /Filespec\n/F (" + name + ")\n/EF <<\n/F " + reference(objects.size() + 2) + "\n>>\n>>");
    names += "(" + name + ") " + reference(objects.size()) + " ";
    objects.push_back(pdf_stream("/Type /EmbeddedFile", bytes));
  }
  objects[0] = "<<\n/Type /Catalog\n/Pages 2 0 R\n/Names <<\n/EmbeddedFiles <<\n/Names [ " + names + "]\n>>\n>>\n>>";
  objects[1] = "<<\n/Type /Pages\n/Kids [ " + kids + "]\n/Count " + std::to_string(pages.size()) + "\n>>";
  objects[2] = "<<\n/Title (A small report)\n>>";
  objects[3] = "<<\n/Type /Font\n/Subtype /Type0\n/BaseFont /Small\n/Encoding /Identity-H\n/ToUnicode 5 0 R\n>>";
  objects[4] = pdf_stream("", to_unicode(pages));
  return support::written_pdf(objects);
}

struct Made {
  std::string pdf, list;
};

/// The report that inputs make: page one says its files' sizes, page two the readings. `attached`: with its inputs.
inline Made made(base::FileSet files, int number = 1, bool attached = true) {
  const auto list = issue::text_of(issue::manifest_of(files, "RD 2644", number, 0, makers()));
  const auto foot = ", Inputs " + issue::short_digest(base::sha256_hex(list));
  const auto &readings = files.at("readings.csv");
  const std::vector<std::string> pages{"Issue " + std::to_string(number) + ", " + std::to_string(files.size()) + " files" + foot,
                                       readings.substr(8, readings.size() - 9) + foot};
  files.emplace(std::string(issue::manifest_name), list);
  return {pdf_with(pages, attached ? files : base::FileSet{}), list};
}

inline issue::KeptFile kept(const std::string &path, const std::string &bytes) { return {path, base::sha256_hex(bytes), bytes.size()}; }

inline issue::Entry entry(const Made &report, int number, base::Date date) {
  issue::Entry entry;
  entry.report = "RD 2644";
  entry.issue = number;
  entry.state = "final";
  entry.date = date;
  entry.folder = "RD-2644-issue-" + std::to_string(number);
  entry.document = entry.unsigned_document = kept(entry.folder + ".pdf", report.pdf);
  entry.manifest = base::sha256_hex(report.list);
  entry.inputs = issue::read_manifest(report.list).value().files;
  entry.makers = makers();
  entry.recipients = {{"the buyer", "by letter"}};
  return entry;
}

inline issue::Register registered(const std::vector<issue::Entry> &entries) {
  issue::Register all;
  for (const auto &entry : entries) {
    all.text = with_entry(all, entry);
    all.entries.push_back(entry);
  }
  return all;
}

inline issue::Against without_register() {
  issue::Against against{.here = makers()};
  against.make_again = [](const base::FileSet &files, const issue::Manifest &manifest) { return issue::MadeAgain{made(files, manifest.issue).pdf, {}}; };
  return against;
}

inline issue::Against with_register(const std::vector<issue::Entry> &entries) {
  auto against = without_register();
  against.register_ = registered(entries);
  return against;
}

inline const issue::Layer &layer(const issue::Verification &found, const std::string &name) {
  for (const auto &layer : found.layers)
    if (layer.name == name) return layer;
  throw std::out_of_range(name);
}

inline issue::Answer answer(const issue::Verification &found, const std::string &name) { return layer(found, name).answer; }

} // namespace small_report
