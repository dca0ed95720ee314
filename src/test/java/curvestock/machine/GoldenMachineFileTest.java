package curvestock.machine;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.drawing.MachineDrawing;
import curvestock.drawing.SampleLayouts;
import curvestock.dxf.SheetDxf;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Outlines;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import curvestock.units.Money;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** One small sheet, byte for byte, so that no change to the files goes unnoticed. Data invented. */
class GoldenMachineFileTest {

  private static MachineSheet sheet() {
    SheetStock stock =
        SheetStock.rectangle(
            "offcut",
            Length.ofMillimetres(400),
            Length.ofMillimetres(300),
            Length.ofMillimetres(6),
            Money.ZERO);
    Piece sixth =
        Piece.of(
            "S",
            "sixth",
            new AnnularSector(
                Length.ofMillimetres(200), Length.ofMillimetres(50), Angle.ofDegrees(60)));
    Layout layout =
        new Layout(
            stock,
            SampleLayouts.CUTTING,
            List.of(
                new Placement(sixth, new Pose(10, 150, 0)),
                new Placement(SampleLayouts.BLOCK, new Pose(300, 200, 1.5))));
    MachineSetup setup =
        MachineFilesTest.setup(
            Outlines.OFFSET, 0, MachineFilesTest.gaps(2), LengthUnit.MILLIMETRE, true);
    return MachineSheet.of(layout, List.of("S-1", "B-1"), setup);
  }

  private static void compare(String name, String text) throws IOException {
    String asked = System.getProperty("curvestock.golden", "");
    if (!asked.isEmpty()) {
      Files.writeString(Path.of(asked, name), text);
    }
    try (InputStream stream = GoldenMachineFileTest.class.getResourceAsStream(name)) {
      assertThat(stream).as("golden file %s", name).isNotNull();
      assertThat(text).isEqualTo(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void svg_ofASmallSheet_isAsReviewed() throws Exception {
    compare("small-sheet.svg", MachineDrawing.svg(sheet()));
  }

  @Test
  void dxf_ofASmallSheet_isAsReviewed() throws Exception {
    // Kept with plain line ends, which version control leaves alone.
    compare("small-sheet.dxf", SheetDxf.of(sheet()).replace("\r\n", "\n"));
  }

  /**
   * Structure: only groups, paths, title, description and metadata, as SVG 1.1 (W3C 2011) has them;
   * nothing that points outside. Groups bear the open attributes by which a vector editor shows
   * them as layers.
   */
  @Test
  void svg_hasOnlyPlainElements_andPointsNowhere() throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    Document document =
        factory
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(MachineDrawing.svg(sheet()))));
    NodeList all = document.getElementsByTagNameNS("*", "*");
    Set<String> attributes =
        Set.of(
            "id",
            "d",
            "fill",
            "stroke",
            "stroke-width",
            "width",
            "height",
            "viewBox",
            "xmlns",
            "data-form",
            "data-piece",
            "data-pose",
            "data-hole-of",
            "inkscape:groupmode",
            "inkscape:label",
            "xmlns:inkscape");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      assertThat(element.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
      assertThat(element.getLocalName()).isIn("svg", "title", "desc", "metadata", "g", "path");
      for (int k = 0; k < element.getAttributes().getLength(); k++) {
        assertThat(element.getAttributes().item(k).getNodeName()).isIn(attributes);
        assertThat(element.getAttributes().item(k).getNodeValue()).doesNotContain("url(");
      }
    }
    assertThat(Optional.ofNullable(document.getDoctype())).isEmpty();
  }
}
