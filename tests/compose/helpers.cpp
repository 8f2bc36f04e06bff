#include "helpers.h"

#include <catch2/catch.hpp>

#include "strakebook/steel/survey/reader.h"

namespace strakebook::sample {

namespace {

/// One walk over everything that a document holds; text and links are two uses of it.
struct Walk {
  std::string text;
  Links links;

  void line(const content::Inlines &inlines) {
    see(inlines);
    if (!inlines.empty())
      text += text_of(inlines) + "\n";
  }
  void see(const content::Inlines &inlines) {
    for (const auto &one : inlines)
      if (const auto *reference = std::get_if<content::Reference>(&one))
        links.references.push_back(*reference);
  }
  void id(const std::string &one) {
    if (!one.empty())
      links.ids.push_back(one);
  }
  void words(const std::string &one) {
    if (!one.empty())
      text += one + "\n";
  }
  void all(const std::vector<content::Block> &blocks) {
    for (const auto &block : blocks) {
      id(block.id);
      std::visit([this](const auto &what) { visit(what); }, block.what);
    }
  }
  void lead(const std::string &target) {
    if (!target.empty())
      links.references.push_back({target, content::Reference::Form::text, {}, {}});
  }
  void drawing(const content::Drawing &one) {
    for (const auto &element : one.elements) {
      if (const auto *label = std::get_if<content::Label>(&element)) {
        id(label->id);
        see(label->text);
        lead(label->target);
      }
      if (const auto *spot = std::get_if<content::Spot>(&element)) {
        id(spot->id);
        lead(spot->target);
      }
      if (const auto *outline = std::get_if<content::Outline>(&element))
        lead(outline->target);
    }
  }
  void visit(const content::Heading &heading) {
    words(heading.number);
    line(heading.text);
  }
  void visit(const content::Paragraph &paragraph) { line(paragraph.text); }
  void visit(const content::KeyValues &keys) {
    for (const auto &entry : keys.entries) {
      id(entry.id);
      words(entry.label);
      line(entry.value);
    }
  }
  void visit(const content::List &list) {
    for (const auto &item : list.items)
      line(item);
  }
  void visit(const content::Table &table) {
    words(table.label);
    line(table.caption);
    for (const auto &column : table.columns)
      words(column.head);
    for (const auto &group : table.groups) {
      id(group.id);
      line(group.head);
      for (const auto &row : group.rows) {
        id(row.id);
        for (const auto &cell : row.cells) {
          line(cell.text);
          if (cell.glyph)
            drawing(*cell.glyph);
        }
      }
    }
    for (const auto &note : table.notes)
      line(note);
  }
  void visit(const content::Figure &figure) {
    words(figure.label);
    line(figure.caption);
    for (const auto &panel : figure.panels) {
      id(panel.id);
      line(panel.title);
      line(panel.title_right);
      drawing(panel.drawing);
    }
    for (const auto &note : figure.notes)
      line(note);
  }
  void visit(const content::Photo &photo) {
    line(photo.placeholder);
    line(photo.caption);
  }
  void visit(const content::Columns &columns) {
    for (const auto &cell : columns.cells)
      all(cell);
  }
  void visit(const content::Together &together) { all(together.blocks); }
  void visit(const content::EndMark &end) { line(end.text); }
  void visit(const content::Rule &) {}
  void visit(const content::Space &) {}
  void visit(const content::PageBreak &) {}
  void visit(const content::Contents &) {}
};

} // namespace

void assess_again(Composed &sample) {
  sample.assessment = assess::assess(sample.survey, sample.house.policy, sample.findings);
  sample.outlook = outlook::outlook(sample.survey, sample.assessment, sample.house.policy);
}

Composed small_survey() {
  const std::filesystem::path file =
      std::filesystem::path(STRAKEBOOK_TESTS) / "compose" / "data" / "survey.yaml";
  base::Diagnostics sink;
  auto house = house::read_house("base", std::filesystem::path(STRAKEBOOK_ROOT) / "layouts",
                                 file.parent_path(), {}, sink);
  INFO(base::terminal_text(sink));
  REQUIRE(house);
  REQUIRE(sink.ok());
  auto survey = survey::read_survey(file, house->policy, sink);
  INFO(base::terminal_text(sink));
  REQUIRE(sink.ok());
  Composed out{.house = std::move(*house), .survey = std::move(survey)};
  assess_again(out);
  REQUIRE(out.findings.ok());
  return out;
}

std::string text_of(const content::Inlines &inlines) {
  std::string out;
  for (const auto &one : inlines) {
    if (const auto *text = std::get_if<content::Text>(&one))
      out += text->text;
    if (const auto *sign = std::get_if<content::Sign>(&one))
      out += "[" + sign->meaning + "]";
    if (std::holds_alternative<content::LineBreak>(one))
      out += "/";
    if (const auto *reference = std::get_if<content::Reference>(&one))
      out += reference->shown.empty() ? "->" + reference->target : reference->shown;
  }
  for (auto at = out.find("\u00A0"); at != std::string::npos; at = out.find("\u00A0"))
    out.replace(at, 2, " ");
  return out;
}

std::string text_of(const std::vector<content::Block> &blocks) {
  Walk walk;
  walk.all(blocks);
  return walk.text;
}

std::string section_text(const content::Document &document, const std::string &section) {
  for (const auto &one : document.sections)
    if (one.id == compose::section_id(section))
      return text_of(one.blocks);
  FAIL("no section " + section);
  return {};
}

bool contains(const std::string &text, const std::string &part) {
  return text.find(part) != std::string::npos;
}

Links links_of(const content::Document &document) {
  Walk walk;
  for (const auto &section : document.sections)
    walk.all(section.blocks);
  walk.see(document.furniture.head_left);
  return std::move(walk.links);
}

} // namespace strakebook::sample
