#include "house/layouts.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>

namespace test {
namespace {

namespace fs = std::filesystem;
using strakebook::base::Diagnostics;

const fs::path shipped_layouts = fs::path(STRAKEBOOK_ROOT) / "layouts";

std::string text_of(const fs::path &file) {
  std::ostringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

} // namespace

Layouts::Layouts() { fs::copy(shipped_layouts, root_.path / "installed", fs::copy_options::recursive); }

void Layouts::install(const std::string &file, const std::string &text) const { root_.write("installed/" + file, text); }
void Layouts::beside(const std::string &file, const std::string &text) const {
  root_.write("survey/layouts/" + file, text);
}

void Layouts::change(const std::string &file, const std::string &was, const std::string &now) const {
  std::string text = text_of(root_.path / "installed" / file);
  const auto at = text.find(was);
  INFO(was);
  REQUIRE(at != text.npos);
  REQUIRE(text.find(was, at + 1) == text.npos);
  text.replace(at, was.size(), now);
  install(file, text);
}

std::optional<strakebook::house::House> Layouts::read(const std::string &name, Diagnostics &sink) const {
  return strakebook::house::read_house(name, root_.path / "installed", root_.path / "survey", {}, sink);
}

std::optional<strakebook::house::House> Layouts::extended(const std::string &body, Diagnostics &sink) const {
  install("ours.yaml", "layout: 1\nextends: base\n" + body);
  return read("ours", sink);
}

std::optional<strakebook::house::House> shipped(const std::string &name, Diagnostics &sink) {
  return strakebook::house::read_house(name, shipped_layouts, fs::path(STRAKEBOOK_TESTS) / "house", {}, sink);
}

void check_only(const Diagnostics &sink, strakebook::base::Code code, const std::string &part) {
  INFO(strakebook::base::terminal_text(sink));
  REQUIRE(sink.all().size() == 1);
  const auto &found = sink.all().front();
  CHECK(found.code == code);
  CHECK(found.span.line > 0);
  CHECK((found.message + found.expected + found.write).find(part) != std::string::npos);
}

} // namespace test
