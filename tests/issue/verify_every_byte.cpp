#include <catch2/catch.hpp>

#include <sstream>

#include "issue/small_report.h"

using namespace small_report;
using issue::Answer;

namespace {

const base::Date october{2026, 10, 21};

issue::Against against_text(const std::string &text) {
  auto against = without_register();
  base::Diagnostics sink;
  against.register_ = issue::read_register(std::make_shared<const base::SourceFile>(base::SourceFile{"register.txt", text}), sink);
  against.register_broken = !sink.ok();
  if (!sink.ok()) against.register_fault = sink.all().front().message;
  return against;
}

/// Each layer that is broken, in their order.
std::string broken_layers(const issue::Verification &found) {
  std::string names;
  for (const auto &layer : found.layers)
    if (layer.answer == Answer::broken) names += layer.name + " ";
  return names;
}

} // namespace

TEST_CASE("every byte of a two-page report, turned: the register knows it, and so does the report itself") {
  const auto report = made(inputs());
  const auto by_register = with_register({entry(report, 1, october)});
  const auto alone = without_register();
  auto turned = report.pdf;
  std::map<std::string, int> seen;
  for (std::size_t at = 0; at < turned.size(); ++at) {
    turned[at] ^= 1;
    CAPTURE(at);
    const auto found = verify(turned, by_register);
    if (answer(found, "file") != Answer::broken) FAIL("held by the register");
    if (answer(found, "inputs") != Answer::broken && answer(found, "rendering") != Answer::broken) FAIL("held by itself");
    if (at % 8 == 0 && !verify(turned, alone).broken()) FAIL("held without a register");
    ++seen[broken_layers(found)];
    turned[at] ^= 1;
  }
  CHECK(turned == report.pdf);
  CHECK(seen["file rendering "] > static_cast<int>(turned.size() / 2)); // most bytes are no input's
  CHECK(seen["file inputs "] >= static_cast<int>(inputs().at("readings.csv").size()));
}

TEST_CASE("a report that is cut short anywhere is broken") {
  const auto report = made(inputs());
  const auto alone = without_register();
  for (std::size_t length = 0; length < report.pdf.size(); length += 41) {
    CAPTURE(length);
    CHECK(verify(report.pdf.substr(0, length), alone).broken());
  }
}

TEST_CASE("every line of the register, altered in each of its letters in turn: the register is broken and says where") {
  const auto report = made(inputs()), later = made(inputs("4.7"), 2);
  const auto text = registered({entry(report, 1, october), entry(later, 2, {2026, 11, 9})}).text;
  REQUIRE(answer(verify(report.pdf, against_text(text)), "register") == Answer::holds);
  std::istringstream lines(text);
  std::size_t begin = 0, number = 0;
  for (std::string line; std::getline(lines, line); begin += line.size() + 1, ++number) {
    CAPTURE(line);
    for (std::size_t letter = number % 3; letter <= line.size(); letter += 3) {
      auto altered = text;
      altered[begin + letter] ^= 1;
      const auto against = against_text(altered);
      if (!against.register_broken) FAIL("letter " << letter << " altered, and the register still holds");
    }
    const auto without_line = text.substr(0, begin) + text.substr(begin + line.size() + 1);
    const auto found = verify(report.pdf, against_text(without_line));
    CHECK(answer(found, "register") == Answer::broken);
    CHECK(answer(found, "file") == Answer::cannot_be_checked);
  }
}

TEST_CASE("a register that is broken is believed in what it says replaces a report, and not in what it does not say") {
  const auto report = made(inputs()), later = made(inputs("4.7"), 2);
  auto text = registered({entry(report, 1, october), entry(later, 2, {2026, 11, 9})}).text;
  auto cut = text;
  cut.resize(cut.size() - 2);
  CHECK(verify(report.pdf, against_text(cut)).superseded.by == issue::Superseded::By::not_known);
  CHECK(verify(report.pdf, against_text(text + "more")).superseded.issue == 2);
}
