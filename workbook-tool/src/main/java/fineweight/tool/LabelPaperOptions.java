package fineweight.tool;

import fineweight.label.Extent;
import fineweight.label.LabelLayout;
import fineweight.label.Margins;
import fineweight.label.Paper;
import fineweight.settings.SettingException;
import java.math.BigDecimal;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options about paper and the labels on it, all in millimetres. */
final class LabelPaperOptions {
  @Option(
      names = "--size",
      paramLabel = "WxH",
      description = "Width and height of one label in millimetres, such as 38x21.")
  private String size;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      defaultValue = "A4",
      description =
          "A4, A5, A6, letter, legal, or width and height such as 62x100; ${DEFAULT-VALUE} if absent.")
  private String paper;

  @Option(names = "--landscape", description = "The paper's longer side lies across.")
  private boolean landscape;

  @Option(
      names = "--margins",
      paramLabel = "MM",
      defaultValue = "10",
      description =
          "What stays free at the edges of the paper: one figure, or top,right,bottom,left; ${DEFAULT-VALUE} if absent.")
  private String margins;

  @Option(
      names = "--gaps",
      paramLabel = "MM",
      defaultValue = "0",
      description =
          "What stays free between labels: one figure, or across x down such as 2.5x0; ${DEFAULT-VALUE} if absent.")
  private String gaps;

  @Option(
      names = "--skip",
      paramLabel = "N",
      defaultValue = "0",
      description = "Leave the first N places of the first page empty: they were used before.")
  private int skip;

  @Option(names = "--frames", description = "A thin line around each label, to cut along.")
  private boolean frames;

  int skipped() {
    return skip;
  }

  /**
   * @throws SettingException if an option cannot be used
   */
  LabelLayout layout() throws SettingException {
    if (size == null) {
      throw new SettingException(
          "--size is missing: measure a label and give its width and height in millimetres, such as --size 38x21");
    }
    if (skip < 0) {
      throw new SettingException("--skip is a number of labels from 0, not " + skip);
    }
    Extent label = read(Extent.read(size), "--size", size, "38x21");
    Paper page = read(Paper.read(paper), "--paper", paper, "A4, letter or 62x100");
    Margins free = read(Margins.read(margins), "--margins", margins, "10, or 13,8,13,8");
    Extent between = read(gaps(), "--gaps", gaps, "2, or 2.5x0");
    try {
      return new LabelLayout(landscape ? page.turned() : page, label, free, between, frames);
    } catch (IllegalArgumentException impossible) {
      throw new SettingException(impossible.getMessage());
    }
  }

  private Optional<Extent> gaps() {
    return gaps.strip().matches("\\d+(\\.\\d+)?")
        ? Optional.of(new Extent(new BigDecimal(gaps.strip()), new BigDecimal(gaps.strip())))
        : Extent.read(gaps);
  }

  private static <T> T read(Optional<T> value, String option, String words, String example)
      throws SettingException {
    return value.orElseThrow(
        () ->
            new SettingException(
                option + ": \"" + words + "\" is not understood; write " + example));
  }
}
