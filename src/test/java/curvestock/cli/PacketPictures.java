package curvestock.cli;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Takes the pictures of sheets, helix, chart and packet that README and guide show, from packets
 * made afresh (invented jobs), into the folder given. No test: run it when a drawing has changed.
 */
final class PacketPictures {

  private static final int DOTS_PER_INCH = 54;
  private static final int GAP = 6;

  private final Path folder;

  private PacketPictures(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] args) throws IOException {
    PacketPictures pictures = new PacketPictures(Path.of(args[0]));
    Path scratch = Files.createTempDirectory("packet-pictures");
    Path packet = packet(scratch.resolve("built-in"));
    pictures.copy(packet.resolve("sheets/sheet-01.png"), "default-sheet-1");
    pictures.copy(packet.resolve("sheets/sheet-02.png"), "default-sheet-2");
    pictures.copy(packet.resolve("charts/choices.png"), "compare-choices");
    for (String name : List.of("helix-plan", "helix-side", "helix-ends")) {
      pictures.copy(packet.resolve(name + ".png"), name);
    }
    pictures.collage(packet);
    Path mixed = packet(scratch.resolve("mixed"), "demo-data/window-loops.yaml");
    pictures.copy(mixed.resolve("sheets/sheet-02.png"), "mixed-sheet");
  }

  private static Path packet(Path out, String... job) {
    List<String> words = new ArrayList<>(List.of("packet"));
    words.addAll(List.of(job));
    words.addAll(List.of("--quiet", "--out", out.toString()));
    CommandRun run = CommandRun.of(words.toArray(String[]::new));
    if (run.code() != 0) {
      throw new IllegalStateException(run.err());
    }
    return out;
  }

  private void copy(Path from, String name) throws IOException {
    Files.copy(from, folder.resolve(name + ".png"), StandardCopyOption.REPLACE_EXISTING);
  }

  /** Some papers of a packet side by side: two rows. */
  private void collage(Path packet) throws IOException {
    List<BufferedImage> upper =
        List.of(
            page(packet.resolve("patterns/02-R2.pdf"), 0),
            page(packet.resolve("patterns/02-R2.pdf"), 1),
            page(packet.resolve("trammel.pdf"), 0));
    List<BufferedImage> lower =
        List.of(page(packet.resolve("marking-out.pdf"), 0), page(packet.resolve("labels.pdf"), 0));
    int width = Math.max(width(upper), width(lower));
    int height = height(upper) + height(lower) + 3 * GAP;
    BufferedImage all = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D on = all.createGraphics();
    on.setColor(Color.LIGHT_GRAY);
    on.fillRect(0, 0, width, height);
    row(on, upper, GAP);
    row(on, lower, height(upper) + 2 * GAP);
    on.dispose();
    ImageIO.write(all, "png", folder.resolve("shop-packet.png").toFile());
  }

  private static BufferedImage page(Path pdf, int number) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFRenderer renderer = new PDFRenderer(document);
      renderer.setRenderingHints(
          new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON));
      return renderer.renderImageWithDPI(number, DOTS_PER_INCH);
    }
  }

  private static void row(Graphics2D on, List<BufferedImage> pages, int top) {
    int left = GAP;
    for (BufferedImage page : pages) {
      on.drawImage(page, left, top, null);
      left += page.getWidth() + GAP;
    }
  }

  private static int width(List<BufferedImage> pages) {
    return GAP + pages.stream().mapToInt(page -> page.getWidth() + GAP).sum();
  }

  private static int height(List<BufferedImage> pages) {
    return pages.stream().mapToInt(BufferedImage::getHeight).max().orElse(0);
  }
}
