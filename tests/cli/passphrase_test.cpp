#include <catch2/catch.hpp>

#include <string>

#include <CLI/CLI.hpp>
#include <fcntl.h>
#include <poll.h>
#include <pty.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

#include "cli/key_arguments.h"
#include "cli/passphrase.h"
#include "issue/throw_away_keys.h"
#include "support/temp_folder.h"

namespace base = strakebook::base;
using namespace strakebook::cli;

namespace {

const support::TempFolder &folder() {
  static const support::TempFolder made;
  return made;
}

Arguments with(const std::string &key, const std::string &passphrase_file = "") {
  Arguments arguments;
  arguments.key = folder().write("key.pem", key);
  if (!passphrase_file.empty()) arguments.passphrase_file = folder().write("passphrase", passphrase_file);
  return arguments;
}

std::string locked_key() {
  static const auto key = throw_away::ec();
  return throw_away::pem(key, "two words") + throw_away::pem(throw_away::certificate(key, {}));
}

/// What `passphrase` says, in one line: the passphrase, or what is wrong.
std::string outcome(const Arguments &arguments) {
  base::Diagnostics sink;
  const auto got = passphrase(arguments, sink);
  if (got && sink.ok()) return "got [" + *got + "]";
  REQUIRE(sink.errors() == 1);
  return std::string(base::number_of(sink.all()[0].code)) + " " + sink.all()[0].message;
}

/// Everything that can be read until the other end is closed, or for five seconds.
std::string read_all(int fd) {
  std::string all;
  char bytes[256];
  pollfd ready{fd, POLLIN, 0};
  while (::poll(&ready, 1, 5000) > 0) {
    const auto got = ::read(fd, bytes, sizeof bytes);
    if (got <= 0) break;
    all.append(bytes, static_cast<std::size_t>(got));
  }
  return all;
}

/// What the terminal showed, and the outcome, of a process whose terminal is answered with `typed`.
struct AtTerminal {
  std::string shown, outcome;
};

std::string read_until(int fd, std::string_view word) {
  std::string all;
  char c = 0;
  pollfd ready{fd, POLLIN, 0};
  while (all.find(word) == all.npos && ::poll(&ready, 1, 5000) > 0 && ::read(fd, &c, 1) == 1) all += c;
  return all;
}

/// Waits until the terminal no longer shows what is typed; a program asks first and then turns that off.
void wait_for_silence(int terminal) {
  constexpr int tries = 5000;
  termios now{};
  for (int i = 0; i < tries && ::tcgetattr(terminal, &now) == 0 && (now.c_lflag & ECHO) != 0; ++i) ::usleep(1000);
  REQUIRE((now.c_lflag & ECHO) == 0);
}

AtTerminal at_terminal(const Arguments &arguments, const std::string &typed) {
  int terminal = -1, answer[2];
  REQUIRE(::pipe(answer) == 0);
  const pid_t child = ::forkpty(&terminal, nullptr, nullptr, nullptr);
  REQUIRE(child >= 0);
  if (child == 0) {
    const auto said = outcome(arguments);
    const auto written = ::write(answer[1], said.data(), said.size());
    ::_exit(written == static_cast<ssize_t>(said.size()) ? 0 : 1);
  }
  ::close(answer[1]);
  AtTerminal found{.shown = read_until(terminal, ": "), .outcome = {}};
  wait_for_silence(terminal);
  REQUIRE(::write(terminal, typed.data(), typed.size()) == static_cast<ssize_t>(typed.size()));
  found.outcome = read_all(answer[0]);
  found.shown += read_all(terminal);
  int status = 0;
  ::waitpid(child, &status, 0);
  ::close(terminal);
  ::close(answer[0]);
  return found;
}

} // namespace

TEST_CASE("the first line of the file named is the passphrase, to its last blank") {
  CHECK(outcome(with(locked_key(), "two words\n")) == "got [two words]");
  CHECK(outcome(with(locked_key(), "two words")) == "got [two words]");
  CHECK(outcome(with(locked_key(), "two words\r\nmore\n")) == "got [two words]");
  CHECK(outcome(with(locked_key(), "two words \nmore\n")) == "got [two words ]");
  CHECK(outcome(with(locked_key(), "\n")) == "got []");
  CHECK(outcome(with(locked_key(), std::string(1024, 'x'))) == "got [" + std::string(1024, 'x') + "]");
  CHECK(outcome(with(locked_key(), std::string(1025, 'x'))).rfind("SB0860 ", 0) == 0);
}

TEST_CASE("a passphrase file that is not there is an error of reading") {
  auto arguments = with(locked_key());
  arguments.passphrase_file = folder().path / "not there";
  CHECK(outcome(arguments).rfind("SB0001 ", 0) == 0);
}

TEST_CASE("a hyphen is standard input") {
  auto arguments = with(locked_key());
  arguments.passphrase_file = "-";
  int pipe[2];
  REQUIRE(::pipe(pipe) == 0);
  REQUIRE(::write(pipe[1], "two words\n", 10) == 10);
  ::close(pipe[1]);
  const int before = ::dup(0);
  ::dup2(pipe[0], 0);
  const auto said = outcome(arguments);
  ::dup2(before, 0);
  ::close(before);
  ::close(pipe[0]);
  CHECK(said == "got [two words]");
}

TEST_CASE("a key without a passphrase is not asked for one") {
  CHECK(outcome(with(throw_away::pem(throw_away::ec()))) == "got []");
}

TEST_CASE("a locked key is asked for at the terminal, and what is typed is not shown") {
  const auto found = at_terminal(with(locked_key()), "two words\n");
  CHECK(found.outcome == "got [two words]");
  CHECK(found.shown.find("key.pem") != std::string::npos);
  CHECK(found.shown.find("two words") == std::string::npos);
}

TEST_CASE("nothing is read from standard input where there is no terminal") {
  int answer[2];
  REQUIRE(::pipe(answer) == 0);
  const auto arguments = with(locked_key());
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    ::setsid(); // leaves the terminal, if there is one
    const auto said = outcome(arguments);
    const auto written = ::write(answer[1], said.data(), said.size());
    ::_exit(written == static_cast<ssize_t>(said.size()) ? 0 : 1);
  }
  ::close(answer[1]);
  const auto said = read_all(answer[0]);
  ::close(answer[0]);
  int status = 0;
  ::waitpid(child, &status, 0);
  CHECK(said.rfind("SB0860 ", 0) == 0);
  CHECK(said.find("no terminal") != std::string::npos);
}

TEST_CASE("a signer is had from the files named; without a key there is none, and nothing is wrong") {
  base::Diagnostics sink;
  const auto signer = signer_of(with(locked_key(), "two words\n"), sink);
  REQUIRE(signer);
  CHECK(signer->name() == "A. Surveyor");
  CHECK_FALSE(signer_of({}, sink));
  CHECK(sink.ok());
  CHECK_FALSE(signer_of(with(locked_key(), "other words\n"), sink));
  REQUIRE(sink.errors() == 1);
  CHECK(sink.all()[0].code == base::Code::signing_failed);
}

TEST_CASE("the options of a command that signs name files, and no passphrase") {
  CLI::App app;
  Arguments arguments;
  add_key(app, arguments);
  app.parse("--key a.p12 --certificate b.pem --passphrase-file -");
  CHECK(arguments.key == "a.p12");
  CHECK(arguments.certificate == "b.pem");
  CHECK(arguments.passphrase_file == "-");
  CHECK_THROWS_AS(app.parse("--passphrase-file c"), CLI::ParseError);
  CHECK_THROWS_AS(app.parse("--key a.p12 --passphrase secret"), CLI::ParseError);
}
