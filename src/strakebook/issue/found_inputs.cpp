#include "strakebook/issue/found_inputs.h"

#include <algorithm>

#include <fmt/format.h>

#include "strakebook/base/digest.h"
#include "strakebook/base/files.h"

namespace strakebook::issue {

namespace {

/// Where inputs lie: attached with their list among them, and those of a folder that are listed and not attached.
struct Places {
  base::FileSet attached, beside;
};

std::string list_in(const base::FileSet &files) {
  const auto found = files.find(std::string(manifest_name));
  return found == files.end() ? std::string() : found->second;
}

bool as_listed(const std::string &bytes, const KeptFile &listed) {
  return bytes.size() == listed.bytes && base::sha256_hex(bytes) == listed.digest;
}

/// The bytes of a listed file: those under its name, else those of another with the same digest (a file is attached once).
const std::string *bytes_of(const KeptFile &listed, const base::FileSet &files) {
  if (const auto found = files.find(listed.path); found != files.end()) return &found->second;
  const auto same = std::ranges::find_if(files, [&](const auto &file) { return as_listed(file.second, listed); });
  return same == files.end() ? nullptr : &same->second;
}

std::string altered(const KeptFile &listed, const std::string &bytes, const char *where) {
  return fmt::format("{}, {}, is not as listed: {} bytes, SHA-256 {}, where the list says {} bytes, {}", listed.path, where, bytes.size(),
                     base::sha256_hex(bytes), listed.bytes, listed.digest);
}

/// Takes a listed file in; the fault of it, or nothing.
std::string take(const KeptFile &listed, const Places &places, base::FileSet &to) {
  const auto *attached = bytes_of(listed, places.attached), *bytes = attached ? attached : bytes_of(listed, places.beside);
  if (!bytes) return listed.path + " is listed and is missing";
  if (!as_listed(*bytes, listed)) return altered(listed, *bytes, attached ? "attached" : "in the folder of inputs");
  to.emplace(listed.path, *bytes);
  return {};
}

/// A file of the folder; nullopt: none there that can be read.
std::optional<std::string> read_beside(const base::Folder &folder, const std::string &path) {
  base::Diagnostics unread; // what is not there is missing, and is said so
  return folder.holds(path) && folder.has(path) ? folder.read(path, base::most_source_bytes, {}, unread) : std::nullopt;
}

base::FileSet lying_beside(const base::Folder &folder, const Manifest &manifest, const base::FileSet &attached) {
  base::FileSet lying;
  for (const auto &listed : manifest.files)
    if (!bytes_of(listed, attached))
      if (auto bytes = read_beside(folder, listed.path)) lying.emplace(listed.path, std::move(*bytes));
  return lying;
}

std::string not_listed(const base::FileSet &attached, const Manifest &manifest) {
  for (const auto &[name, bytes] : attached)
    if (name != manifest_name && std::ranges::find(manifest.files, name, &KeptFile::path) == manifest.files.end())
      return name + " is attached and is not listed";
  return {};
}

std::string fault_of_list(const FoundInputs &found) {
  if (found.list.empty()) return found.any ? fmt::format("files are attached, but not the list of them, {}", manifest_name) : "";
  return found.manifest ? "" : fmt::format("the list of inputs, {}, cannot be read", manifest_name);
}

std::string fault_of_files(FoundInputs &found, const Places &places, const std::string &list_beside) {
  for (const auto &listed : found.manifest->files)
    if (auto fault = take(listed, places, found.files); !fault.empty()) return fault;
  if (!places.beside.empty() && !list_beside.empty() && list_beside != found.list) return "the list in the folder of inputs is another than the attached one";
  return not_listed(places.attached, *found.manifest);
}

} // namespace

FoundInputs found_inputs(const std::optional<file::Contents> &contents, const std::optional<base::Folder> &beside) {
  Places places;
  if (contents) places.attached = contents->attached;
  const auto list_beside = beside ? read_beside(*beside, std::string(manifest_name)).value_or("") : "";
  FoundInputs found;
  found.list = list_in(places.attached);
  if (found.list.empty()) found.list = list_beside;
  if (!found.list.empty()) found.manifest = read_manifest(found.list);
  if (beside && found.manifest) places.beside = lying_beside(*beside, *found.manifest, places.attached);
  found.attached = places.attached.size() > places.attached.count(std::string(manifest_name));
  found.any = found.attached || !places.beside.empty();
  if (!contents) found.fault = "what is attached cannot be read: the file is damaged, or is no PDF";
  else if (!contents->damaged.empty()) found.fault = contents->damaged.front() + ", attached, cannot be unpacked, or comes twice";
  if (found.fault.empty()) found.fault = fault_of_list(found);
  if (found.fault.empty() && found.manifest && found.any) found.fault = fault_of_files(found, places, list_beside);
  return found;
}

} // namespace strakebook::issue
