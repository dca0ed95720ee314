package curvestock.drawing;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgent;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.util.ParsedURL;

/**
 * Turns a drawing into a picture for looking at. Loads nothing from outside and runs no scripts.
 */
public final class Picture {

  private static final int WIDEST = 20_000;

  private Picture() {}

  /**
   * The drawing as a PNG on white, its height following from its width.
   *
   * @param svg the drawing's text
   * @param width in pixels, 1 to 20000
   * @throws IllegalArgumentException if the width is out of range or the text cannot be drawn
   */
  public static byte[] png(String svg, int width) {
    if (width < 1 || width > WIDEST) {
      throw new IllegalArgumentException(
          "picture width must be within 1 to " + WIDEST + " pixels, but was " + width);
    }
    SealedTranscoder transcoder = new SealedTranscoder();
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) width);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, false);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_EXECUTE_ONLOAD, false);
    transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
    try {
      // A reader, not a URI: with a file's URI Batik would load its neighbours.
      transcoder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput());
    } catch (TranscoderException e) {
      throw new IllegalArgumentException("the drawing cannot be shown: " + e.getMessage(), e);
    }
    return transcoder.png;
  }

  /** Batik's hint against outside resources alone lets some through; its user agent decides. */
  private static final class SealedTranscoder extends ImageTranscoder {

    private byte[] png = {};

    @Override
    public BufferedImage createImage(int width, int height) {
      return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    }

    /** By the JDK's own writer: Batik's takes twice the time for a larger file. */
    @Override
    public void writeImage(BufferedImage image, TranscoderOutput unused)
        throws TranscoderException {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      // Not ImageIO.write(image, format, stream), which makes a file of its own in between.
      try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
        ImageIO.write(image, "png", stream);
      } catch (IOException e) {
        throw new TranscoderException(e);
      }
      png = bytes.toByteArray();
    }

    @Override
    protected UserAgent createUserAgent() {
      return new SVGAbstractTranscoderUserAgent() {
        @Override
        public ExternalResourceSecurity getExternalResourceSecurity(
            ParsedURL resource, ParsedURL document) {
          return new NoLoadExternalResourceSecurity();
        }

        @Override
        public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL document) {
          return new NoLoadScriptSecurity(type);
        }
      };
    }
  }
}
