#include "cli/passphrase.h"

#include <array>
#include <cerrno>

#include <fcntl.h>
#include <fmt/format.h>
#include <openssl/crypto.h>
#include <openssl/evp.h>

#include "strakebook/base/file_descriptor.h"
#include "strakebook/base/wipe.h"

namespace strakebook::cli {

namespace {

/// Bytes of a passphrase. The text has room for all from the start, so that no part of it is left in memory by growing.
constexpr std::size_t most = 1024;

std::optional<std::string> refused(base::Diagnostics &sink, std::string what, std::string expected, std::string write) {
  sink.error(base::Code::signing_failed, {}, std::move(what), std::move(expected), std::move(write));
  return std::nullopt;
}

/// The first line of what is read, without its end.
std::optional<std::string> first_line(int fd, const std::string &name, base::Diagnostics &sink) {
  std::string line;
  line.reserve(most + 1);
  for (char c = 0; line.size() <= most;) {
    const ssize_t got = ::read(fd, &c, 1);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) {
      sink.error(base::Code::file_unreadable, {}, fmt::format("{} cannot be read: {}", name, base::system_words(errno)));
      return std::nullopt;
    }
    if (got == 0 || c == '\n') {
      if (!line.empty() && line.back() == '\r') line.pop_back();
      return line;
    }
    line += c;
  }
  base::wipe(line);
  return refused(sink, fmt::format("the first line of {} is no passphrase: it is too long", name), fmt::format("{} bytes at most", most), "a file that holds the passphrase alone");
}

std::optional<std::string> from_file(const std::filesystem::path &file, base::Diagnostics &sink) {
  if (file == "-") return first_line(0, "standard input", sink);
  const base::FileDescriptor fd(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
  if (fd.open()) return first_line(fd.get(), file.string(), sink);
  sink.error(base::Code::file_unreadable, {}, fmt::format("{} cannot be opened: {}", file.string(), base::system_words(errno)));
  return std::nullopt;
}

bool has_terminal() { return base::FileDescriptor(::open("/dev/tty", O_RDWR | O_CLOEXEC | O_NOCTTY)).open(); }

std::optional<std::string> asked(const std::string &key, base::Diagnostics &sink) {
  if (!has_terminal()) return refused(sink, fmt::format("{} is locked, and there is no terminal to ask at", key), "the passphrase of the key", "--passphrase-file FILE");
  std::array<char, most + 1> typed{};
  const int failed = EVP_read_pw_string(typed.data(), static_cast<int>(typed.size()), fmt::format("Passphrase of {}: ", key).c_str(), 0);
  std::string answer;
  answer.reserve(most + 1);
  answer = typed.data();
  OPENSSL_cleanse(typed.data(), typed.size());
  if (failed == 0) return answer;
  base::wipe(answer);
  return refused(sink, "no passphrase was given", fmt::format("the passphrase of {}", key), "run it again");
}

} // namespace

std::optional<std::string> passphrase(const Arguments &arguments, base::Diagnostics &sink) {
  if (!arguments.passphrase_file.empty()) return from_file(arguments.passphrase_file, sink);
  if (!issue::is_locked(arguments.key)) return std::string();
  return asked(arguments.key.string(), sink);
}

std::optional<issue::Signer> signer_of(const Arguments &arguments, base::Diagnostics &sink) {
  if (arguments.key.empty()) return std::nullopt;
  auto secret = passphrase(arguments, sink);
  if (!secret) return std::nullopt;
  const base::WipedAtEnd wiped(*secret);
  return issue::Signer::load({arguments.key, arguments.certificate}, *secret, sink);
}

} // namespace strakebook::cli
