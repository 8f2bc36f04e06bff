#include "strakebook/issue/issued_folder.h"

#include <algorithm>
#include <cerrno>
#include <stdexcept>

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>

#include "strakebook/base/digest.h"
#include "strakebook/base/durable.h"
#include "strakebook/base/file_descriptor.h"
#include "strakebook/base/files.h"
#include "strakebook/issue/staged.h"

namespace strakebook::issue {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view lock_name = ".lock";

/// A file as a place, without a line.
base::SourceSpan named(const fs::path &file) { return {std::make_shared<const base::SourceFile>(base::SourceFile{file.string(), ""}), 0, 0, 1}; }

std::vector<std::string> folders_registered(const Register &read) {
  std::vector<std::string> names;
  for (const Entry &entry : read.entries)
    names.push_back(entry.folder);
  return names;
}

/// Folders with a document of their own name, as only an issue has.
std::vector<std::string> folders_in_place(const fs::path &issued) {
  std::vector<std::string> names;
  std::error_code failed;
  for (fs::directory_iterator at(issued, failed), end; !failed && at != end; at.increment(failed)) {
    const std::string name = at->path().filename().string();
    if (!name.starts_with(begun_begins) && fs::is_regular_file(at->path() / (name + ".pdf"), failed))
      names.push_back(name);
  }
  std::ranges::sort(names);
  return names;
}

/// A register that lost its end still has whole chains; the folder knows better. `in_place` was looked at first.
void refuse_cut(const fs::path &file, const std::vector<std::string> &in_place, const Register &read, base::Diagnostics &sink) {
  const auto registered = folders_registered(read);
  const auto lost = std::ranges::find_if(in_place, [&](const auto &name) { return std::ranges::find(registered, name) == registered.end(); });
  if (lost == in_place.end())
    return;
  sink.error(base::Code::register_broken, named(file), fmt::format("the register does not have {}, which lies beside it: its end was cut off", *lost),
             "an entry for each folder of an issue", "nothing here by hand: put back the register from your latest copy of the folder");
}

std::optional<Register> read_in(const fs::path &issued, base::Diagnostics &sink) {
  const auto in_place = folders_in_place(issued);
  const fs::path file = issued / register_name;
  Register read;
  std::error_code failed;
  if (fs::exists(fs::symlink_status(file, failed))) {
    const auto source = base::read_source(file, file.string(), {}, sink);
    if (!source)
      return std::nullopt;
    const auto errors = sink.errors();
    read = read_register(source, sink);
    if (sink.errors() != errors)
      return std::nullopt;
  }
  const auto errors = sink.errors();
  refuse_cut(file, in_place, read, sink);
  return sink.errors() == errors ? std::optional(std::move(read)) : std::nullopt;
}

/// Folders that a disk may take for one.
bool same_on_some_disk(std::string_view one, std::string_view other) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  return std::ranges::equal(one, other, {}, lower, lower);
}

bool may_be_added(const fs::path &file, const Register &current, const Entry &entry, base::Diagnostics &sink) {
  if (const Entry *same = current.of(entry.report, entry.issue, entry.addendum)) {
    sink.error(base::Code::already_issued, named(file),
               fmt::format("{} was issued on {}; what is issued is never changed", entry.folder, base::iso(same->date)),
               "a number that was not issued yet", "the next issue number, with an amendment that says what changed and why");
    return false;
  }
  for (const Entry &other : current.entries)
    if (same_on_some_disk(other.folder, entry.folder)) {
      sink.error(base::Code::already_issued, named(file),
                 fmt::format("report \"{}\" and report \"{}\", which is in the register, would lie in one folder, {}", entry.report, other.report, other.folder),
                 "numbers that differ in more than signs and capitals", "another report number");
      return false;
    }
  return true;
}

/// An entry that does not say what its files are would be a fault of the program, and must not reach the register.
void hold_to_files(const Entry &entry, const base::FileSet &files) {
  const auto held = [&](const KeptFile &file) {
    const auto found = files.find(file.path);
    return found != files.end() && found->second.size() == file.bytes && base::sha256_hex(found->second) == file.digest;
  };
  if (!held(entry.document) || !std::ranges::all_of(entry.beside, held) || files.size() != entry.beside.size() + 1)
    throw std::logic_error("an entry of the register that is not what its files are: " + entry.folder);
}

} // namespace

std::optional<Register> register_in(const fs::path &survey_folder, base::Diagnostics &sink) { return read_in(survey_folder / issued_name, sink); }

std::optional<base::Folder> files_of(const fs::path &survey_folder, const Entry &entry) {
  const fs::path issued = survey_folder / issued_name;
  const std::string begun = std::string(begun_begins) + entry.folder;
  // In place, begun, in place again: it may take its name between two looks.
  for (const std::string &name : {entry.folder, begun, entry.folder})
    if (std::error_code failed; fs::is_regular_file(issued / name / entry.document.path, failed))
      return base::Folder(issued / name);
  return std::nullopt;
}

struct Issuing::State {
  fs::path issued;
  base::FileDescriptor lock; ///< open: held
  Register current;
};

std::optional<Issuing> Issuing::begin(const fs::path &survey_folder, base::Diagnostics &sink) {
  const fs::path issued = survey_folder / issued_name;
  std::error_code failed;
  const bool made = fs::create_directory(issued, failed);
  errno = failed.value();
  if (failed || (made && !base::sync_folder(survey_folder.empty() ? fs::path(".") : survey_folder))) {
    cannot(issued, "the folder cannot be made", sink);
    return std::nullopt;
  }
  const fs::path lock = issued / lock_name;
  auto state = std::make_unique<State>(
      State{issued, base::FileDescriptor(base::uninterrupted([&] { return ::open(lock.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644); })), {}});
  if (!state->lock.open() || base::uninterrupted([&] { return ::flock(state->lock.get(), LOCK_EX); }) != 0) {
    cannot(lock, "the folder cannot be locked against other runs", sink);
    return std::nullopt;
  }
  auto current = read_in(issued, sink);
  if (!current || !clear_up(issued, folders_registered(*current), sink))
    return std::nullopt;
  state->current = std::move(*current);
  return Issuing(std::move(state));
}

Issuing::Issuing(std::unique_ptr<State> state) : state_(std::move(state)) {}
Issuing::Issuing(Issuing &&) noexcept = default;
Issuing::~Issuing() = default;

const Register &Issuing::current() const { return state_->current; }

bool Issuing::commit(const Entry &entry, const base::FileSet &files, base::Diagnostics &sink) {
  if (!may_be_added(state_->issued / register_name, state_->current, entry, sink))
    return false;
  if (const fs::path place = state_->issued / entry.folder; fs::exists(fs::symlink_status(place))) {
    sink.error(base::Code::issuing_failed, named(place), "it lies where the issue would lie, and the register does not have it",
               "no file or folder of that name", "move it elsewhere, and run the command again");
    return false;
  }
  hold_to_files(entry, files);
  if (!stage(state_->issued, entry.folder, files, sink))
    return false;
  Register next{state_->current.entries, with_entry(state_->current, entry)};
  next.entries.push_back(entry);
  const fs::path file = state_->issued / register_name;
  if (!base::write_atomically(file, next.text, sink)) {
    // It may have taken its name though the disk did not answer for it: then what is staged belongs to it.
    const auto now = read_in(state_->issued, sink);
    const bool in_it = now && now->of(entry.report, entry.issue, entry.addendum);
    if (now && !in_it)
      clear_up(state_->issued, folders_registered(*now), sink);
    else if (in_it)
      finish(state_->issued, entry.folder, sink);
    return false;
  }
  state_->current = std::move(next);
  return finish(state_->issued, entry.folder, sink);
}

} // namespace strakebook::issue
