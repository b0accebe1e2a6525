package fineweight.workbook.oracle;

/** All that a judgement on a difference may ask. */
record Comparison(Expected expected, CellJudge cells, StructureJudge structure) {}
