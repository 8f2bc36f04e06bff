#include "strakebook/paper/typeset/context.h"

#include <utility>

namespace strakebook::typeset {

std::string child_id(const std::string &parent, std::size_t index) {
  std::string id = parent;
  id += '/';
  id += std::to_string(index + 1);
  return id;
}

std::string id_of(const content::Block &block, const std::string &parent, std::size_t index) {
  return block.id.empty() ? child_id(parent, index) : block.id;
}

Context inside(const Context &parent, const content::Block &block, std::size_t index) {
  Context child = parent;
  child.id = id_of(block, parent.id, index);
  if (block.origin.line > 0)
    child.origin = block.origin;
  if (parent.structure != nullptr && !page::is_furniture(parent.tag))
    child.tag = parent.structure->at(&block);
  return child;
}

Context moved(const Context &context, base::Pt by) {
  Context result = context;
  result.indent += by;
  return result;
}

Context tagged(const Context &context, page::Tag tag) {
  Context result = context;
  result.tag = page::under(context.tag, std::move(tag));
  return result;
}

Context repeated(const Context &context) {
  Context result = context;
  result.tag = page::furniture();
  return result;
}

void report(const Context &context, base::Code code, std::string message, std::string expected,
            std::string write) {
  base::Diagnostic d;
  d.code = code;
  d.span = context.origin;
  d.message = std::move(message);
  d.expected = std::move(expected);
  d.write = std::move(write);
  context.sink.add(std::move(d));
}

} // namespace strakebook::typeset
