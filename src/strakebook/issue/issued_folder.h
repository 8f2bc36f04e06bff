#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "strakebook/base/folder.h"
#include "strakebook/issue/register.h"

/// The folder "issued" beside a survey: the register, and a folder for each issue. One process at a time changes it; whatever ends that
/// process, the register and each folder are as they were or as they are to be, and the next one that changes it finishes or clears
/// what was begun.
namespace strakebook::issue {

inline constexpr std::string_view issued_name = "issued";
inline constexpr std::string_view register_name = "register.txt";

/// Words as part of a file's name: letters and digits of ASCII, one hyphen for anything between them. What has none, or is too long
/// for a name, is told from others by its digest.
std::string file_part(std::string_view words);
/// "RD 2644", 2 -> "RD-2644-issue-2"; with an addendum "RD-2644-issue-2-addendum-1".
std::string folder_name(std::string_view report, int issue, int addendum);

/// The register as it stands; empty where there is none. Changes nothing.
std::optional<Register> register_in(const std::filesystem::path &survey_folder, base::Diagnostics &sink);

/// The files of an entry that is registered, found also where the process that issued it was ended before the last step.
std::optional<base::Folder> files_of(const std::filesystem::path &survey_folder, const Entry &entry);

/// Holds the lock of the folder from when it is made to its end; waits for another that holds it.
class Issuing {
public:
  static std::optional<Issuing> begin(const std::filesystem::path &survey_folder, base::Diagnostics &sink);
  Issuing(Issuing &&) noexcept;
  ~Issuing();

  const Register &current() const; ///< read under the lock, what was begun before cleared or finished
  /// Files and entry together: all or nothing. Refuses a number that is registered, and one whose folder another has. False without
  /// the entry in the register: nothing was changed; with it: only the last step is left to the next run.
  bool commit(const Entry &entry, const base::FileSet &files, base::Diagnostics &sink);

private:
  struct State;
  explicit Issuing(std::unique_ptr<State> state);
  std::unique_ptr<State> state_;
};

} // namespace strakebook::issue
