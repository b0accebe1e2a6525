package fineweight.tool;

import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.workbook.WorkbookRefusal;

/** The exit codes, each with its meaning for the help text. */
enum ExitCode {
  DONE(0, "done"),
  USAGE(2, "a word or option of the command is wrong, or no price is given"),
  FILE(3, "the file is absent, a folder, not readable, not writable, or the disk is full"),
  IN_USE(4, "another program holds the file, or it changed meanwhile"),
  DAMAGED(5, "the file is damaged, no workbook, or made to do harm"),
  UNSUPPORTED(6, "a kind of file that is not written"),
  PROTECTED(7, "the file is encrypted, signed or protected"),
  NO_ROOM(8, "our columns find no place without touching what is yours"),
  NO_INVENTORY(9, "no inventory was found, or more than one"),
  BAD_CELLS(10, "cells hold what cannot be"),
  NO_SCREEN(11, "there is no screen to open the window on"),
  INTERNAL(70, "a fault of this program");

  private final int code;
  private final String meaning;

  ExitCode(int code, String meaning) {
    this.code = code;
    this.meaning = meaning;
  }

  int code() {
    return code;
  }

  String meaning() {
    return meaning;
  }

  static ExitCode of(WorkbookRefusal refusal) {
    return switch (refusal.kind()) {
      case FILE -> FILE;
      case IN_USE -> IN_USE;
      case DAMAGED -> DAMAGED;
      case UNSUPPORTED -> UNSUPPORTED;
      case PROTECTED -> PROTECTED;
      case NO_ROOM -> NO_ROOM;
    };
  }

  static ExitCode of(RefreshRefusal refusal) {
    return switch (refusal.kind()) {
      case NO_INVENTORY, SEVERAL_INVENTORIES -> NO_INVENTORY;
      case BAD_CELLS -> BAD_CELLS;
      case NO_PRICES, OPTION -> USAGE;
      case PROTECTED -> PROTECTED;
    };
  }
}
