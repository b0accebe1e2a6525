package fineweight.result;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fineweight.metal.Metal;
import fineweight.refresh.RefreshReport;
import fineweight.sale.RealisedGain;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * A run's result as JSON. Money and mass are texts with decimal figures, so that no reader rounds
 * them. The form is described by the schema {@code docs/result.schema.json}; a change that breaks a
 * reader of it gets a new number in {@link #FORM}.
 */
public final class ResultJson {
  /** What this form is called in the JSON itself. */
  public static final String FORM = "fineweight result 1";

  private final JsonMapper mapper;

  /** In UTF-8, as files of JSON are. */
  public ResultJson() {
    this(false);
  }

  private ResultJson(boolean plainLetters) {
    mapper =
        JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .configure(JsonWriteFeature.ESCAPE_NON_ASCII, plainLetters)
            .build();
  }

  /** The same JSON in ASCII, which arrives whole whatever letters the terminal is set to. */
  public static ResultJson ofPlainLetters() {
    return new ResultJson(true);
  }

  /** The JSON, ending in a line break. */
  public String of(RunResult result) {
    ObjectNode root = mapper.createObjectNode();
    root.put("form", FORM);
    root.put("exitCode", result.exitCode());
    result.complaint().ifPresent(words -> root.put("complaint", words));
    texts(root.putArray("warnings"), result.warnings());
    ArrayNode files = root.putArray("files");
    result.files().forEach(file -> file(files.addObject(), file));
    try {
      return mapper.writeValueAsString(root) + "\n";
    } catch (JsonProcessingException never) {
      throw new IllegalStateException("a tree of texts and whole numbers is always JSON", never);
    }
  }

  private static void file(ObjectNode node, FileResult file) {
    node.put("file", file.file().toString());
    node.put("outcome", file.outcome().words());
    node.put("exitCode", file.exitCode());
    file.complaint().ifPresent(words -> node.put("complaint", words));
    file.report().ifPresent(report -> report(node, report));
  }

  private static void report(ObjectNode node, RefreshReport report) {
    RefreshReport.Understood inventory = report.inventory();
    if (!inventory.sheet().isEmpty()) {
      node.put("sheet", inventory.sheet());
    }
    node.put("headingRow", inventory.headingRow());
    ObjectNode columns = node.putObject("columns");
    inventory.columns().forEach(columns::put);
    texts(node.putArray("unusedHeadings"), inventory.unused());
    figures(node, report.figures());
    ArrayNode open = node.putArray("openRows");
    report.open().forEach(row -> openRow(open.addObject(), row));
    texts(node.putArray("badCells"), report.badCells());
    texts(node.putArray("formulasNotCalculated"), report.notCalculated());
    node.put("rowsForSale", report.selling().lines().size());
    ArrayNode gains = node.putArray("gains");
    report.selling().gains().years().forEach(year -> gain(gains.addObject(), year));
    node.put("changedCells", report.changedCells());
    report.backup().ifPresent(backup -> node.put("backup", backup.toString()));
  }

  private static void figures(ObjectNode node, RefreshReport.Figures figures) {
    node.put("rows", figures.rows());
    node.put("pieces", figures.pieces());
    ObjectNode states = node.putObject("states");
    figures.states().forEach(states::put);
    ObjectNode ounces = node.putObject("fineTroyOunces");
    for (Metal metal : figures.content().masses().keySet()) {
      ounces.put(
          metal.ounceCode().orElse(metal.symbol()), plain(figures.content().troyOunces(metal)));
    }
    node.put("currency", figures.currency());
    node.put("spotDate", figures.spotDate().toString());
    ObjectNode melt = node.putObject("melt");
    melt.put("least", plain(figures.money().least()));
    melt.put("most", plain(figures.money().most()));
    melt.put("fromMemory", plain(figures.money().fromMemory()));
    node.put("rowsWithoutPrice", figures.unpriced());
  }

  private static void openRow(ObjectNode node, RefreshReport.OpenRow row) {
    node.put("place", row.place());
    node.put("words", row.words());
    node.put("note", row.note());
    node.put("atStake", plain(row.atStake()));
  }

  private static void gain(ObjectNode node, RealisedGain.Year year) {
    node.put("year", year.year());
    node.put("pieces", year.pieces());
    node.put("received", plain(year.received()));
    node.put("cost", plain(year.cost()));
    node.put("gain", plain(year.gain().money()));
  }

  private static String plain(Money money) {
    return plain(money.getAmount());
  }

  private static String plain(BigDecimal number) {
    return number.toPlainString();
  }

  private static void texts(ArrayNode array, List<String> texts) {
    texts.forEach(array::add);
  }
}
