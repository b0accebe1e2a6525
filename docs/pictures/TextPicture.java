import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;

/** Makes a picture of what a terminal shows. Words: the text, the picture to make. */
final class TextPicture {
  private static final int EDGE = 14;

  private TextPicture() {}

  public static void main(String[] words) throws Exception {
    List<String> lines = Files.readAllLines(Path.of(words[0]));
    Font font = new Font("DejaVu Sans Mono", Font.PLAIN, 15);
    BufferedImage probe = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    FontMetrics letters = probe.createGraphics().getFontMetrics(font);
    int width = lines.stream().mapToInt(letters::stringWidth).max().orElse(1) + 2 * EDGE;
    int height = lines.size() * letters.getHeight() + 2 * EDGE;
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setColor(new Color(0x1C1F24));
    pen.fillRect(0, 0, width, height);
    pen.setColor(new Color(0xECE9E0));
    pen.setFont(font);
    for (int i = 0; i < lines.size(); i++) {
      pen.drawString(lines.get(i), EDGE, EDGE + letters.getAscent() + i * letters.getHeight());
    }
    pen.dispose();
    ImageIO.write(picture, "png", Path.of(words[1]).toFile());
  }
}
