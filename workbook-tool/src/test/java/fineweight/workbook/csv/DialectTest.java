package fineweight.workbook.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.WorkbookRefusal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DialectTest {
  @TempDir Path folder;

  private Dialect dialect(byte[] content) throws Exception {
    return Dialect.of(Files.write(folder.resolve("table.csv"), content));
  }

  private Dialect dialect(String content) throws Exception {
    return dialect(content.getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '\'',
      textBlock =
          """
          'Year,Coin|1921,"dollar; worn, cleaned"|1922,dime', COMMA
          'Year;Coin;Paid|1921;mark, bent;1,50|1922;crown;2,50', SEMICOLON
          'Year>Coin, country>Paid|1921>mark, DE>1;2|1922>crown, GB>2', TAB
          'Item|5 mark 1908|crown', COMMA
          'sep=;|a,b;c,d|e,f;g,h', SEMICOLON
          'Coin;Note|mark;a, b, c, d, e|mark;|mark;x', SEMICOLON
          'Coin,Price,Note|mark,"1,50",a;b|crown,"2,50",c;d', COMMA
          """)
  void findsTheDelimiter(String text, String delimiter) throws Exception {
    char expected =
        switch (delimiter) {
          case "COMMA" -> ',';
          case "SEMICOLON" -> ';';
          default -> '\t';
        };

    assertThat(dialect(text.replace('|', '\n').replace('>', '\t')).delimiter()).isEqualTo(expected);
  }

  @Test
  void findsBars() throws Exception {
    assertThat(dialect("Year|Coin\n1921|a, b\n1922|c").delimiter()).isEqualTo('|');
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '\'',
      textBlock =
          """
          'a;b|1.690,00;14,00 EUR', ','
          'a;b|1,690.00;14.00', '.'
          'a;b|x;y', ','
          'a,b|x,y', '.'
          'a,b|"27,70","1,5"', ','
          'a;b|EUR 3,5;01.02.1908', ','
          'a;b|1,234;5.5', '.'
          'a;b|1.234;5,5', ','
          """)
  void findsTheDecimalSign(String text, char sign) throws Exception {
    assertThat(dialect(text.replace('|', '\n')).decimalSign()).isEqualTo(sign);
  }

  @Test
  void readsTextWithoutMarkAsUtf8IfItIs() throws Exception {
    assertThat(dialect("K\u00f6nig,\u20ac").encoding())
        .isEqualTo(new TextEncoding(StandardCharsets.UTF_8, false));
  }

  @Test
  void readsOtherTextWithoutMarkAsWindows1252() throws Exception {
    Charset windows = Charset.forName("windows-1252");

    assertThat(dialect("K\u00f6nig,\u20ac".getBytes(windows)).encoding())
        .isEqualTo(new TextEncoding(windows, false));
  }

  @Test
  void losesNoByteThatWindows1252LeavesOpen() throws Exception {
    byte[] content = {'a', ',', (byte) 0x81, (byte) 0x9D, '\n'};

    assertThat(dialect(content).encoding().charset()).isEqualTo(StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @CsvSource({"UTF-8", "UTF-16LE", "UTF-16BE"})
  void believesAByteOrderMark(Charset charset) throws Exception {
    assertThat(dialect("\uFEFFYear,Coin\n1908,K\u00f6nig".getBytes(charset)).encoding())
        .isEqualTo(new TextEncoding(charset, true));
  }

  @Test
  void refusesAByteOrderMarkThatLies() {
    byte[] content = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'a', (byte) 0xFF};

    assertThatThrownBy(() -> dialect(content))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("says that its text is UTF-8");
  }

  @Test
  void refusesZeroBytesAndNamesTheLine() {
    assertThatThrownBy(() -> dialect("a,b\nc,\0d\n"))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining("table.csv")
        .hasMessageContaining("line 2");
  }
}
