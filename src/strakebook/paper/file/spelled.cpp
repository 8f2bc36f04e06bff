#include "strakebook/paper/file/spelled.h"

#include <stdexcept>

#include <fmt/format.h>
#include <qpdf/QUtil.hh>

namespace strakebook::file {

namespace {

/// A name as a file writes it (ISO 32000-1, 7.3.5): what is no plain letter as a number.
std::string name_spelled(const std::string &name) {
  std::string out = "/";
  for (const unsigned char c : name.substr(1)) {
    const bool plain = c > 0x20 && c < 0x7F && std::string_view("#()<>[]{}/%").find(static_cast<char>(c)) == std::string_view::npos;
    if (plain) out += static_cast<char>(c);
    else out += fmt::format("#{:02X}", c);
  }
  return out;
}

std::string bytes_spelled(const std::string &bytes) { return "<" + QUtil::hex_encode(bytes) + ">"; }

std::string direct(QPDFObjectHandle object) {
  if (object.isNull()) return "null";
  if (object.isBool()) return object.getBoolValue() ? "true" : "false";
  if (object.isInteger()) return std::to_string(object.getIntValue());
  if (object.isReal()) return object.getRealValue();
  if (object.isName()) return name_spelled(object.getName());
  if (object.isString()) return bytes_spelled(object.getStringValue());
  if (object.isDictionary()) return spelled(entries_of(object));
  if (!object.isArray()) throw std::logic_error("an object that does not stand in a dictionary");
  std::string out = "[";
  for (const auto &item : object.getArrayAsVector()) out += (out.size() > 1 ? " " : "") + spelled(item);
  return out + "]";
}

} // namespace

std::string spelled(const QPDFObjectHandle &object) {
  auto copy = object;
  return copy.isIndirect() ? fmt::format("{} {} R", copy.getObjectID(), copy.getGeneration()) : direct(copy);
}

Entries entries_of(const QPDFObjectHandle &dictionary) {
  Entries entries;
  auto copy = dictionary;
  for (const auto &key : copy.getKeys()) entries[name_spelled(key)] = spelled(copy.getKey(key));
  return entries;
}

std::string spelled(const Entries &entries) {
  std::string out = "<<\n";
  for (const auto &[key, value] : entries) out += key + " " + value + "\n";
  return out + ">>";
}

std::string text_spelled(std::string_view utf8) { return bytes_spelled(QUtil::utf8_to_utf16(std::string(utf8))); }

std::string text_read(std::string_view hexadecimal) {
  const auto bytes = QUtil::hex_decode(std::string(hexadecimal));
  return QUtil::is_utf16(bytes) ? QUtil::utf16_to_utf8(bytes) : std::string();
}

} // namespace strakebook::file
