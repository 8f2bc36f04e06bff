#include "strakebook/paper/output/pdf_colour.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <string_view>
#include <vector>

namespace strakebook::output {

namespace {

constexpr std::size_t header_size = 128, curve_steps = 1024;
constexpr std::string_view space_name = "sRGB IEC61966-2.1";

void put16(std::string &to, unsigned value) {
  to += static_cast<char>(value >> 8 & 0xFF);
  to += static_cast<char>(value & 0xFF);
}
void put32(std::string &to, std::uint32_t value) {
  put16(to, value >> 16);
  put16(to, value & 0xFFFF);
}

/// Numbers in 1/65536.
using Xyz = std::array<std::uint32_t, 3>;
constexpr Xyz d50{0xF6D6, 0x10000, 0xD32D};
constexpr Xyz red{0x6FA2, 0x38F5, 0x0390}, green{0x6299, 0xB785, 0x18DA}, blue{0x24A0, 0x0F84, 0xB6CF};

std::string type(std::string_view name) { return std::string(name) + std::string(4, '\0'); }

std::string xyz(const Xyz &value) {
  auto data = type("XYZ ");
  for (auto part : value)
    put32(data, part);
  return data;
}

std::string curve() {
  auto data = type("curv");
  put32(data, curve_steps);
  for (std::size_t i = 0; i < curve_steps; ++i) {
    const double v = static_cast<double>(i) / (curve_steps - 1);
    const double linear = v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    put16(data, static_cast<unsigned>(std::lround(linear * 65535)));
  }
  return data;
}

/// With its Unicode and script forms left empty.
std::string description() {
  auto data = type("desc");
  put32(data, static_cast<std::uint32_t>(space_name.size() + 1));
  return data + std::string(space_name) + std::string(1 + 8 + 3 + 67, '\0');
}

std::string copyright() { return type("text") + "none claimed" + '\0'; }

std::string header(std::size_t size) {
  std::string data;
  put32(data, static_cast<std::uint32_t>(size));
  put32(data, 0);
  put32(data, 0x02100000);
  data += "mntrRGB XYZ ";
  for (unsigned part : {1999u, 10u, 1u, 0u, 0u, 0u}) // when the colour space was published
    put16(data, part);
  data += "acsp";
  data.resize(68, '\0');
  for (auto part : d50)
    put32(data, part);
  data.resize(header_size, '\0');
  return data;
}

} // namespace

std::string srgb_profile() {
  struct Entry {
    std::string_view name;
    std::size_t data;
  };
  std::vector<std::string> data = {description(), copyright(), xyz(d50), xyz(red), xyz(green), xyz(blue), curve()};
  const std::array<Entry, 9> entries = {{{"desc", 0}, {"cprt", 1}, {"wtpt", 2}, {"rXYZ", 3}, {"gXYZ", 4},
                                         {"bXYZ", 5}, {"rTRC", 6}, {"gTRC", 6}, {"bTRC", 6}}};
  std::string table, body;
  std::vector<std::pair<std::size_t, std::size_t>> places;
  const std::size_t first = header_size + 4 + entries.size() * 12;
  for (const auto &one : data) {
    places.emplace_back(first + body.size(), one.size());
    body += one;
    body.resize((body.size() + 3) / 4 * 4, '\0');
  }
  put32(table, static_cast<std::uint32_t>(entries.size()));
  for (const auto &entry : entries) {
    table += entry.name;
    put32(table, static_cast<std::uint32_t>(places[entry.data].first));
    put32(table, static_cast<std::uint32_t>(places[entry.data].second));
  }
  return header(first + body.size()) + table + body;
}

void add_output_intent(PdfFile &file) {
  auto profile = file.stream(srgb_profile(), Coding::deflate);
  profile.number("N", 3);
  auto intent = file.indirect_dict();
  intent.name("Type", "OutputIntent")
      .name("S", "GTS_PDFA1")
      .text("OutputConditionIdentifier", space_name)
      .text("RegistryName", "http://www.color.org")
      .text("Info", space_name)
      .put("DestOutputProfile", profile);
  file.catalog().put("OutputIntents", file.array().put(intent));
}

} // namespace strakebook::output
