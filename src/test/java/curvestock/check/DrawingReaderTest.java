package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found in a drawing's XML, and where reading it ends. */
class DrawingReaderTest {

  private static final String ROOT =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"20mm\" viewBox=\"0 0 10"
          + " 20\">";

  private static DrawingFile read(String inner) throws CheckException {
    return DrawingReader.read(ROOT + "\n" + inner + "</svg>");
  }

  private static String cut(String inner) {
    return "<g id=\"cut\">" + inner + "</g>";
  }

  private static String path(String attributes) {
    return "<path " + attributes + "/>";
  }

  @Test
  void drawing_isReadWithItsPiecesAndTheirHoles() throws Exception {
    DrawingFile file =
        read(
            "<g id=\"sheet\"><path id=\"edge\" d=\"E\"/><path id=\"other\" d=\"O\"/></g>"
                + "<path id=\"edge\" d=\"not this\"/>"
                + "<g id=\"cut\" data-form=\"F\">"
                + path("id=\"h\" data-hole-of=\"p\" d=\"H\"")
                + path("id=\"p\" data-piece=\"A\" d=\"P\"")
                + path("data-piece=\"B\" d=\"Q\"")
                + path("id=\"i\" data-hole-of=\"p\" d=\"I\"")
                + "</g>"
                + path("id=\"after\" d=\"Z\""));

    assertThat(file.width()).isEqualTo("10mm");
    assertThat(file.height()).isEqualTo("20mm");
    assertThat(file.viewBox()).isEqualTo("0 0 10 20");
    assertThat(file.sheetEdge()).contains("E");
    assertThat(file.form()).isEqualTo("F");
    assertThat(file.oddities()).isEmpty();
    assertThat(file.outlines())
        .containsExactly(
            new DrawingFile.OutlinePath("p", "A", List.of("P", "H", "I")),
            new DrawingFile.OutlinePath("path at line 2", "B", List.of("Q")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"transform", "style", "class", "clip-path", "mask", "display", "visibility"})
  void attribute_thatMovesOrHides_isTold(String name) throws Exception {
    String attribute = name + "=\"x\"";

    for (String odd :
        new String[] {
          cut(path("id=\"p\" d=\"P\" " + attribute)),
          "<g id=\"sheet\"><path id=\"p\" " + attribute + "/></g>" + cut(""),
          "<g id=\"p\" " + attribute + ">" + cut("") + "</g>"
        }) {
      assertThat(read(odd).oddities())
          .singleElement()
          .satisfies(
              f -> {
                assertThat(f.message())
                    .contains(
                        "line 2: <", "> has the attribute '" + name + "', which many importers");
                assertThat(f.paths()).containsExactly("p");
              });
    }
    // Deep in a group of other use it moves nothing that is cut.
    assertThat(read("<g><g><g " + attribute + "/></g></g>" + cut("")).oddities()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<g id='cut'><circle id='c' r='5'/></g>|<circle> in the group 'cut': outlines must be"
            + " paths",
        "<g id='cut'><g><title/><desc/></g></g>|",
        "<g id='cut'/><style/>|<style> may change what is drawn",
        "<g id='cut'/><g><g><script/></g></g>|<script> may change what is drawn",
        "<g id='cut'><path id='h' data-hole-of='x' d='H'/></g>|a hole belongs to x, which is not"
            + " drawn"
      })
  void element_outOfPlace_isTold(String inner, String message) throws Exception {
    List<Finding> oddities = read(inner).oddities();

    assertThat(oddities).hasSize(message == null ? 0 : 1);
    assertThat(oddities)
        .allSatisfy(
            f -> {
              assertThat(f.kind()).isEqualTo(Finding.Kind.STRUCTURE);
              assertThat(f.message()).endsWith(String.valueOf(message)).startsWith("line ");
            });
  }

  @Test
  void oddities_areToldUpToTwenty() throws Exception {
    assertThat(read(cut("<circle/>".repeat(19))).oddities()).hasSize(19);
    assertThat(read(cut("<circle/>".repeat(30))).oddities()).hasSize(20);
  }

  @Test
  void limits_areHeldExactly() throws Exception {
    // The root and the group count: 48 more inside them are 50 deep.
    assertThat(read(cut("<g>".repeat(48) + "</g>".repeat(48))).outlines()).isEmpty();
    assertThatThrownBy(() -> read(cut("<g>".repeat(49) + "</g>".repeat(49))))
        .isInstanceOf(CheckException.class)
        .hasMessageContaining("too many or too deeply nested elements");
    assertThat(read(cut("<g/>".repeat(199_998))).outlines()).isEmpty();
    assertThatThrownBy(() -> read(cut("<g/>".repeat(199_999))))
        .hasMessage("line 2: the drawing has too many or too deeply nested elements to be checked");
    assertThat(read(cut("<path d=\"\"/>".repeat(5_000))).outlines()).hasSize(5_000);
    assertThatThrownBy(() -> read(cut("<path d=\"\"/>".repeat(5_001))))
        .hasMessage("line 2: the drawing has more than 5000 outlines: not checked");
    assertThatThrownBy(() -> DrawingReader.read(" ".repeat(20_000_001)))
        .hasMessage("the drawing is too long: 20000001 characters, at most 20000000 are read");
    assertThatThrownBy(() -> DrawingReader.read(" ".repeat(20_000_000)))
        .hasMessageContaining("not readable XML");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<html/>|line 1: the file is not an SVG drawing: it starts with html",
        "<svg/>|line 1: the file is not an SVG drawing: it starts with svg",
        "<g xmlns='http://www.w3.org/2000/svg'/>|not an SVG drawing: it starts with g",
        "<svg xmlns='http://www.w3.org/2000/svg'><g>|line 1: the drawing is not readable XML",
        "<svg xmlns='http://www.w3.org/2000/svg'/>|the drawing has no group with the id 'cut'",
        "<svg xmlns='http://www.w3.org/2000/svg' id='cut'/>|no group with the id 'cut'"
      })
  void file_thatIsNoDrawing_isRefused(String text, String message) {
    assertThatThrownBy(() -> DrawingReader.read(text))
        .isInstanceOf(CheckException.class)
        .hasMessageContaining(message);
  }
}
