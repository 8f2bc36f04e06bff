#include "strakebook/base/apart_child.h"

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <fcntl.h>
#include <new>
#include <optional>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <unistd.h>

#include "strakebook/base/apart_frame.h"

namespace strakebook::base {

namespace {

/// Bytes of address space that the process has now (proc(5), statm: the first figure, in pages).
std::optional<rlim_t> address_space() {
  const int file = open("/proc/self/statm", O_RDONLY | O_CLOEXEC);
  if (file < 0) return std::nullopt;
  char text[64];
  const auto length = read(file, text, sizeof text);
  close(file);
  rlim_t pages = 0;
  if (length <= 0 || std::from_chars(text, text + length, pages).ec != std::errc{}) return std::nullopt;
  return pages * static_cast<rlim_t>(sysconf(_SC_PAGESIZE));
}

bool limit(__rlimit_resource what, rlim_t soft, rlim_t hard) {
  rlimit now{};
  if (getrlimit(what, &now) != 0) return false;
  const rlimit wanted{std::min(soft, now.rlim_max), std::min(hard, now.rlim_max)};
  return setrlimit(what, &wanted) == 0;
}

/// A second after the soft limit of time the kernel kills without asking.
bool take_limits(const ApartLimits &limits) {
  const auto space = address_space();
  if (!space) return false;
  const rlim_t most = *space + limits.memory;
  return limit(RLIMIT_AS, most, most) && limit(RLIMIT_CPU, limits.cpu_seconds, limits.cpu_seconds + 1) &&
         limit(RLIMIT_FSIZE, 0, 0) && limit(RLIMIT_CORE, 0, 0) && limit(RLIMIT_NOFILE, 0, 0);
}

/// What a library says as it dies is not for the user's terminal, and no handler of the parent's runs here.
bool leave_the_parent(pid_t parent) {
  for (const int signal : {SIGSEGV, SIGBUS, SIGILL, SIGFPE, SIGABRT, SIGTERM, SIGINT, SIGXCPU, SIGPIPE})
    std::signal(signal, SIG_DFL);
  const int nothing = open("/dev/null", O_RDWR | O_CLOEXEC);
  if (nothing < 0) return false;
  for (const int standard : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) dup2(nothing, standard);
  prctl(PR_SET_PDEATHSIG, SIGKILL);
  return getppid() == parent; // it may have died before the line above
}

void write_all(int to, std::string_view bytes) {
  while (!bytes.empty()) {
    const auto count = write(to, bytes.data(), bytes.size());
    if (count < 0 && errno != EINTR) return;
    if (count > 0) bytes.remove_prefix(static_cast<std::size_t>(count));
  }
}

} // namespace

void be_child(const std::function<std::string()> &work, int pipe, pid_t parent, const ApartLimits &limits) {
  try {
    if (!leave_the_parent(parent) || !take_limits(limits)) _exit(child_exit::no_limits);
    write_all(pipe, framed(work()));
    _exit(child_exit::answered);
  } catch (const std::bad_alloc &) {
    _exit(child_exit::no_memory);
  } catch (...) {
    _exit(child_exit::threw);
  }
}

} // namespace strakebook::base
