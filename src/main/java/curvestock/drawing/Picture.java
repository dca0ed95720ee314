package curvestock.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
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
import org.apache.batik.ext.awt.image.GraphicsUtil;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Document;

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
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      // A reader, not a URI: with a file's URI Batik would load its neighbours.
      transcoder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(bytes));
    } catch (TranscoderException e) {
      throw new IllegalArgumentException("the drawing cannot be shown: " + e.getMessage(), e);
    }
    return bytes.toByteArray();
  }

  /**
   * Paints straight onto one opaque picture: Batik's own way over tiles with transparency takes
   * half the time again. Its hint against outside resources alone lets some through; its user agent
   * decides.
   */
  private static final class SealedTranscoder extends SVGAbstractTranscoder {

    @Override
    protected void transcode(Document document, String uri, TranscoderOutput output)
        throws TranscoderException {
      super.transcode(document, uri, output);
      BufferedImage image =
          new BufferedImage(Math.round(width), Math.round(height), BufferedImage.TYPE_INT_RGB);
      Graphics2D graphics = GraphicsUtil.createGraphics(image);
      graphics.setColor(Color.WHITE);
      graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.transform(curTxf);
      root.paint(graphics);
      graphics.dispose();
      // Not straight to the stream: then ImageIO would make a file of its own in between.
      try (MemoryCacheImageOutputStream stream =
          new MemoryCacheImageOutputStream(output.getOutputStream())) {
        ImageIO.write(image, "png", stream);
      } catch (IOException e) {
        throw new TranscoderException(e);
      }
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
