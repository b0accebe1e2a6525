package fineweight.workbook;

import java.util.Optional;

/**
 * A cell as read. Immutable.
 *
 * @param value what it shows: for a formula the stored result
 * @param formula the formula's text without the equals sign, if the cell is one (for a member of a
 *     shared or array formula perhaps empty text)
 */
public record Cell(CellPlace place, CellValue value, Optional<String> formula) {}
