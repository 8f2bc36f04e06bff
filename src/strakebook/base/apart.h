#pragma once

#include <chrono>
#include <functional>
#include <string>
#include <variant>

namespace strakebook::base {

/// What work in a child process may use. It can open no file, and writes no file and no core.
struct ApartLimits {
  std::size_t memory = 512u << 20; ///< bytes of address space over what the process has when it starts
  unsigned cpu_seconds = 20;
  std::chrono::milliseconds wall{60'000};
  std::size_t answer = 128u << 20; ///< bytes
};

/// Work that gave no answer.
struct Lost {
  bool started = true; ///< false: there was no child process at all
  std::string how;     ///< in words for a reader: "was ended by signal 11, Segmentation fault"
};

/// Runs `work` in a forked child and returns what it returned, passed back over a pipe with its length and digest. A crash,
/// a hang, a limit gone past, an exception or a damaged answer ends in Lost, and never in this process.
///
/// The child is a copy of the calling thread alone. This program has no other; in one that has, `work` must not need a lock
/// that another thread may hold: allocation is safe (glibc), and the decoders hold none. Nothing of the parent is run on the
/// way out of the child: no destructor, no exit handler, no flushing of files.
std::variant<std::string, Lost> run_apart(const std::function<std::string()> &work, const ApartLimits &limits);

} // namespace strakebook::base
