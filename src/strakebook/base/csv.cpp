#include "strakebook/base/csv.h"

#include <algorithm>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "strakebook/base/plain_text.h"
#include "strakebook/base/text.h"

namespace strakebook::base {
namespace {

class CsvReader {
public:
  CsvReader(const SourcePtr &file, char separator, Diagnostics &sink)
      : file_(file), separator_(separator), sink_(sink) {}

  std::vector<CsvLine> read() {
    std::string_view rest = file_->text;
    if (rest.empty())
      refuse("the file is empty", "the head line, then one line for each station");
    for (int line = 1; !rest.empty(); ++line) {
      const std::size_t end = rest.find('\n');
      take(line, rest.substr(0, end == rest.npos ? end : end + 1));
      rest.remove_prefix(end == rest.npos ? rest.size() : end + 1);
    }
    return std::move(lines_);
  }

private:
  /// At one column of the line, or (column 0) the whole line.
  void refuse(std::string message, std::string write, std::string expected = "", int column = 0,
              Code code = Code::csv_syntax) {
    const int length = column > 0 ? 1 : std::max(1, static_cast<int>(code_points(without_end(raw_)).size()));
    sink_.error(code, {file_, line_, std::max(column, 1), length}, std::move(message), std::move(expected),
                std::move(write));
  }

  static std::string_view without_end(std::string_view raw) {
    if (raw.ends_with('\n'))
      raw.remove_suffix(1);
    if (raw.ends_with('\r'))
      raw.remove_suffix(1);
    return raw;
  }

  int column_of(std::size_t offset) const {
    return static_cast<int>(code_points(raw_.substr(0, offset)).size()) + 1;
  }

  void take(int line, std::string_view raw) {
    line_ = line;
    raw_ = raw;
    if (const auto fault = first_fault(raw, Code::csv_syntax))
      return refuse(fault->message, fault->write, "", column_of(fault->at), fault->code);
    if (!raw.ends_with('\n'))
      return refuse("the last line has no line end", "a line end after the last line",
                    "a line end, without which a file cut short cannot be told from a whole one");
    const std::string_view text = without_end(raw);
    if (text.starts_with('#'))
      return;
    if (trimmed(text).empty())
      return refuse("a blank line", "no blank lines; a line that begins with # is a remark");
    if (const std::size_t quote = text.find('"'); quote != text.npos)
      return refuse("a quotation mark", "the cell without quotation marks", "", column_of(quote));
    keep(split(line, text));
  }

  CsvLine split(int line, std::string_view raw) const {
    CsvLine out{line, {}};
    int column = 1;
    for (;;) {
      const std::size_t end = raw.find(separator_);
      const std::string_view cell = raw.substr(0, end);
      const std::string_view text = trimmed(cell);
      const std::size_t blanks = text.empty() ? 0 : static_cast<std::size_t>(text.data() - cell.data());
      out.cells.push_back({text, column + static_cast<int>(blanks)});
      if (end == raw.npos)
        return out;
      column += static_cast<int>(code_point_count(cell)) + 1;
      raw.remove_prefix(end + 1);
    }
  }

  void keep(CsvLine line) {
    if (!first_)
      first_ = {line.line, line.cells.size()};
    if (line.cells.size() == first_->cells)
      return lines_.push_back(std::move(line));
    const int from = line.cells.size() > first_->cells ? line.cells[first_->cells].column : 0;
    refuse(fmt::format("{} cells in this line", line.cells.size()), "one cell for each column of the head",
           fmt::format("{} cells, as in line {}", first_->cells, first_->line), from);
  }

  struct Head {
    int line = 0;
    std::size_t cells = 0;
  };

  SourcePtr file_;
  char separator_;
  Diagnostics &sink_;
  int line_ = 1;
  std::string_view raw_; ///< the line at hand, with its end
  std::optional<Head> first_;
  std::vector<CsvLine> lines_;
};

} // namespace

std::vector<CsvLine> parse_csv(const SourcePtr &file, char separator, Diagnostics &sink) {
  return CsvReader(file, separator, sink).read();
}

} // namespace strakebook::base
