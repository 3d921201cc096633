#include "engine/solve/stack.h"

#include <utility>

#include "engine/solve/rows.h"

namespace pouncemark::solve {
namespace {

/// What the job says of a row's stack.
struct Said {
  Um typed_um = 0;
  bool from_plies = false;
};

Said said_of(const job::Section& section, const Row& row) {
  const job::RowPair& rows = row.place == RowPlace::lap ? *section.lap_rows : section.side_rows;
  return {rows.stack_um, rows.stack_from_plies};
}

Said said_of(const job::Panel& panel, const Row& /*row*/) {
  return {panel.stack_um, panel.stack_from_plies};
}

Stack typed_stack(const Row& row, Um typed_um) {
  Stack stack;
  if (row.run.is_empty) return stack;
  StackStep step;
  step.from_um = row.run.first_um();
  step.to_um = row.run.last_um();
  step.thickness_um = step.pressed_um = step.left_um = step.right_um = typed_um;
  stack.steps.push_back(std::move(step));
  return stack;
}

template <typename Entry>
void set_all(const Entry& entry, Results* alone) {
  for (Row& row : alone->rows) {
    if (row.kind != RowKind::stitch) continue;
    const Said said = said_of(entry, row);
    row.stack_is_typed = !said.from_plies;
    row.stack_um = said.from_plies ? 0 : said.typed_um;
  }
}

}  // namespace

void set_stacks(const job::Job& /*job*/, const job::Section& section, Results* alone) {
  set_all(section, alone);
}

void set_stacks(const job::Job& /*job*/, const job::Panel& panel, Results* alone) {
  set_all(panel, alone);
}

Stack stack_from_plies(const job::Job& /*job*/, const Results& /*results*/, const Row& /*row*/) {
  Stack stack;
  stack.is_typed = false;
  stack.is_known = false;
  return stack;
}

Stack stack_of(const job::Job& job, const Results& results, const Row& row) {
  const Piece& piece = results.pieces[static_cast<std::size_t>(row.piece)];
  const auto entry = static_cast<std::size_t>(piece.entry);
  const Said said = piece.kind == PieceKind::panel ? said_of(job.panels[entry], row)
                                                   : said_of(job.sections[entry], row);
  return said.from_plies ? stack_from_plies(job, results, row) : typed_stack(row, said.typed_um);
}

}  // namespace pouncemark::solve
