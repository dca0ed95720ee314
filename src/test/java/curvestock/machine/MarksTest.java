package curvestock.machine;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.layout.Placement;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarksTest {

  @Test
  void of_roadbedWithALead_isItsCourseAndATickWhereTheBendBegins() {
    List<Edge> course =
        List.of(
            new Segment(Point.ORIGIN, new Point(100, 0)),
            new Arc(new Point(100, 300), 300, -Math.PI / 2, 0.1),
            new Arc(new Point(100, 300), 300, -Math.PI / 2 + 0.1, 0.2));
    FreeShape bed = new FreeShape(Outline.rectangle(200, 200), course);
    List<List<Edge>> marks =
        Marks.of(new Placement(Piece.of("B", "bed", bed), new Pose(1000, 0, 0)));
    assertThat(marks).hasSize(2);
    assertThat(marks.get(0)).hasSize(3);
    assertThat(marks.get(0).get(0).end()).isEqualTo(new Point(1100, 0));
    Edge tick = marks.get(1).get(0);
    assertThat(tick.start().x()).isEqualTo(1100);
    assertThat(tick.start().y()).isEqualTo(-tick.end().y());
    assertThat(tick.length()).isEqualTo(18);
  }

  @Test
  void of_polygonWithoutCourse_isNothing() {
    FreeShape plate = new FreeShape(Outline.rectangle(50, 50));
    assertThat(Marks.of(new Placement(Piece.of("P", "plate", plate), Pose.HOME))).isEmpty();
  }
}
