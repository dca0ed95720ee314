package curvestock.machine;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.Expectation;
import curvestock.check.Finding;
import curvestock.check.LayoutCheck;
import curvestock.drawing.MachineDrawing;
import curvestock.dxf.SheetDxf;
import curvestock.geometry.Box;
import curvestock.geometry.OutlineOffset;
import curvestock.geometry.Pose;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Outlines;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import curvestock.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every piece of every demo job (lead-ins, ears, easements, holes), in every form of machine file:
 * what is written must pass the check, or the user would meet a fault of ours.
 */
class DemoPiecesTest {

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static Layout alone(Piece piece, Job job) {
    Box box = piece.shape().outline().at(new Pose(0, 0, 0.7)).box();
    SheetStock sheet =
        SheetStock.rectangle(
            "board",
            Length.ofMillimetres(box.width() + 100),
            Length.ofMillimetres(box.height() + 100),
            Length.ofMillimetres(12),
            Money.ZERO);
    Pose pose = new Pose(50 - box.minX(), 50 - box.minY(), 0.7);
    return new Layout(
        sheet, job.cutting(), List.of(new Placement(Piece.of("A", "free", piece.shape()), pose)));
  }

  @ParameterizedTest
  @MethodSource("demos")
  void pieces_inEveryForm_areRightWhenReadBack(Path demo) throws Exception {
    Job job = JobReader.read(Files.readString(demo), demo.toString());
    for (Demand demand : job.demands()) {
      Layout layout = alone(demand.piece(), job);
      double half = job.cutting().kerf().millimetres() / 2;
      boolean growable = OutlineOffset.outwards(demand.piece().shape().outline(), half).isPresent();
      for (Outlines outlines : growable ? Outlines.values() : new Outlines[] {Outlines.FINISHED}) {
        for (double lines : new double[] {0, 0.05}) {
          MachineSetup setup =
              MachineFilesTest.setup(
                  outlines, lines, MachineFilesTest.gaps(3), LengthUnit.MILLIMETRE, lines == 0);
          MachineSheet sheet = MachineSheet.of(layout, List.of("7"), setup);
          for (String text : List.of(MachineDrawing.svg(sheet), SheetDxf.of(sheet))) {
            assertThat(LayoutCheck.check(text, Expectation.of(layout).in(sheet.form())).findings())
                .as("%s, piece %s, %s", demo, demand.piece().id(), sheet.form().words())
                .extracting(Finding::message)
                .isEmpty();
          }
        }
      }
    }
  }
}
