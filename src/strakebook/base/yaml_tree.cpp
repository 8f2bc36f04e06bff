#include "strakebook/base/yaml_tree.h"

#include <algorithm>
#include <sstream>

#include <fmt/format.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/mark.h>
#include <yaml-cpp/parser.h>

#include "strakebook/base/plain_text.h"
#include "strakebook/base/yaml_builder.h"

namespace strakebook::base {
namespace {

class Handler final : public YAML::EventHandler {
public:
  explicit Handler(YamlBuilder &to) : to_(to) {}

  void OnDocumentStart(const YAML::Mark &mark) override { to_.document(to_.at(mark.line, mark.column)); }
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark &mark, YAML::anchor_t anchor) override {
    to_.null(to_.at(mark.line, mark.column), anchor != 0);
  }
  void OnAlias(const YAML::Mark &mark, YAML::anchor_t) override { to_.alias(to_.at(mark.line, mark.column)); }
  void OnScalar(const YAML::Mark &mark, const std::string &tag, YAML::anchor_t anchor,
                const std::string &value) override {
    to_.scalar(to_.at(mark.line, mark.column), tag, anchor != 0, value);
  }
  void OnSequenceStart(const YAML::Mark &mark, const std::string &tag, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value) override {
    to_.open(YamlNode::Kind::list, to_.at(mark.line, mark.column), tag, anchor != 0);
  }
  void OnSequenceEnd() override { to_.close(); }
  void OnMapStart(const YAML::Mark &mark, const std::string &tag, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value) override {
    to_.open(YamlNode::Kind::map, to_.at(mark.line, mark.column), tag, anchor != 0);
  }
  void OnMapEnd() override { to_.close(); }

private:
  YamlBuilder &to_;
};

/// Drives the parser to the end of the file. False: it had to stop before.
bool run(const SourceFile &file, YamlBuilder &builder) {
  // Without a last line end the parser would report an open quote without saying where it was opened.
  std::istringstream in(file.text + "\n");
  try {
    YAML::Parser parser(in);
    Handler handler(builder);
    while (parser.HandleNextDocument(handler)) {
    }
    builder.finish();
    return true;
  } catch (const YamlStop &) {
  } catch (const YAML::Exception &e) {
    builder.parser_fault(builder.at(e.mark.line, e.mark.column), e.msg);
  }
  return false;
}

bool readable(const SourcePtr &file, Diagnostics &sink, const YamlLimits &limits) {
  if (file->text.size() > limits.bytes) {
    sink.error(Code::file_too_large, {file, 0, 0, 1}, fmt::format("the file has {} bytes", file->text.size()),
               fmt::format("at most {} bytes", limits.bytes),
               "readings in a readings file (CSV) that the survey names");
    return false;
  }
  const auto fault = first_fault(file->text, Code::yaml_syntax);
  if (fault)
    sink.error(fault->code, span_at(file, fault->at), fault->message, "", fault->write);
  return !fault;
}

} // namespace

const YamlNode *YamlNode::find(std::string_view key) const {
  const auto found =
      std::find_if(entries.begin(), entries.end(), [&](const Entry &e) { return e.key == key; });
  return found == entries.end() ? nullptr : &found->value;
}

YamlNode parse_yaml(const SourcePtr &file, Diagnostics &sink, YamlLimits limits) {
  YamlNode nothing;
  nothing.span = {file, 1, 1, 1};
  if (!readable(file, sink, limits))
    return nothing;
  YamlBuilder builder(file, sink, limits);
  if (!run(*file, builder))
    return nothing;
  YamlNode root = builder.take();
  if (!root.span.file)
    root.span = nothing.span;
  return root;
}

} // namespace strakebook::base
