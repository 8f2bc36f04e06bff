#include "paper/output/pdf_bytes.h"

#include <charconv>
#include <stdexcept>
#include <zlib.h>

namespace pdf_bytes {

namespace {

std::size_t number_at(std::string_view bytes, std::size_t at) {
  std::size_t value = 0;
  std::from_chars(bytes.data() + at, bytes.data() + bytes.size(), value);
  return value;
}

std::string inflated(std::string_view packed) {
  z_stream zip{};
  inflateInit(&zip);
  zip.next_in = reinterpret_cast<Bytef *>(const_cast<char *>(packed.data()));
  zip.avail_in = static_cast<uInt>(packed.size());
  std::string result, part(65536, '\0');
  int status = Z_OK;
  while (status == Z_OK) {
    zip.next_out = reinterpret_cast<Bytef *>(part.data());
    zip.avail_out = static_cast<uInt>(part.size());
    status = inflate(&zip, Z_NO_FLUSH);
    result.append(part, 0, part.size() - zip.avail_out);
  }
  inflateEnd(&zip);
  if (status != Z_STREAM_END)
    throw std::runtime_error("a stream that does not unpack");
  return result;
}

} // namespace

std::size_t count(std::string_view bytes, std::string_view part) {
  std::size_t found = 0;
  for (auto at = bytes.find(part); at != bytes.npos; at = bytes.find(part, at + part.size()))
    ++found;
  return found;
}

std::string between(std::string_view bytes, std::string_view before, std::string_view after) {
  const auto first = bytes.find(before);
  if (first == bytes.npos)
    return {};
  const auto begin = first + before.size();
  return std::string(bytes.substr(begin, bytes.find(after, begin) - begin));
}

std::string cross_reference_fault(const std::string &bytes) {
  const auto word = bytes.rfind("startxref\n");
  if (word == std::string::npos)
    return "no startxref";
  const auto table = number_at(bytes, word + 10);
  if (bytes.compare(table, 7, "xref\n0 ") != 0)
    return "startxref does not lead to the table";
  const auto entries = number_at(bytes, table + 7);
  const auto first = bytes.find('\n', table + 5) + 1;
  constexpr std::size_t entry_size = 20;
  for (std::size_t i = 1; i < entries; ++i) {
    const auto head = std::to_string(i) + " 0 obj";
    if (bytes.compare(number_at(bytes, first + i * entry_size), head.size(), head) != 0)
      return "object " + std::to_string(i);
  }
  return {};
}

std::vector<std::string> unpacked_streams(const std::string &bytes) {
  std::vector<std::string> streams;
  for (auto at = bytes.find("/FlateDecode"); at != std::string::npos;
       at = bytes.find("/FlateDecode", at + 1)) {
    const auto data = bytes.find('\n', bytes.find("stream", at)) + 1;
    streams.push_back(inflated(std::string_view(bytes).substr(data)));
  }
  return streams;
}

std::string stream_with(const std::string &bytes, std::string_view part) {
  for (auto &stream : unpacked_streams(bytes))
    if (stream.find(part) != std::string::npos)
      return stream;
  throw std::runtime_error("no stream holds " + std::string(part));
}

std::vector<std::string> identifiers(const std::string &bytes) {
  const auto list = between(std::string_view(bytes).substr(bytes.rfind("trailer")), "/ID [", "]");
  const auto second = std::string_view(list).substr(list.find('>') + 1);
  return {between(list, "<", ">"), between(second, "<", ">")};
}

} // namespace pdf_bytes
