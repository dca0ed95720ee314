package curvestock.bench;

import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import curvestock.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code benchmarks/data/cases.csv}; its header says what the columns are. */
final class CaseTable {

  /** More than fit on any sheet of the table. */
  private static final int NO_LIMIT = 4000;

  private CaseTable() {}

  static List<BenchCase> read(Path file) throws IOException {
    List<BenchCase> cases = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      if (!line.isBlank() && !line.startsWith("#") && !line.startsWith("name,")) {
        cases.add(row(line));
      }
    }
    return cases;
  }

  private static BenchCase row(String line) {
    String[] cells = line.split(",", -1);
    if (cells.length != 7) {
      throw new IllegalArgumentException("a case must have 7 columns, but had: " + line);
    }
    LengthUnit unit = cells[1].equals("mm") ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    SheetStock sheet =
        SheetStock.rectangle(
            "sheet",
            length(cells[2], unit),
            length(cells[3], unit),
            Length.ofMillimetres(12),
            Money.ZERO);
    Cutting cutting = Cutting.leaving(length(cells[4], unit), Length.ZERO, length(cells[5], unit));
    List<Demand> wanted = new ArrayList<>();
    for (String kind : cells[6].split("\\|", -1)) {
      wanted.add(demand(kind, unit, wanted.size()));
    }
    return new BenchCase(cells[0], sheet, cutting, wanted);
  }

  private static Demand demand(String text, LengthUnit unit, int number) {
    String[] parts = text.split(":", -1);
    boolean arc = parts[0].equals("arc");
    Length first = length(parts[1], unit);
    Length second = length(parts[2], unit);
    Shape shape =
        arc
            ? new AnnularSector(first, second, Angle.ofDegrees(Double.parseDouble(parts[3])))
            : new Strip(first, second);
    int sizes = arc ? 4 : 3;
    int count = parts.length > sizes ? Integer.parseInt(parts[sizes]) : NO_LIMIT;
    return new Demand(Piece.of("P" + (number + 1), text, shape), count);
  }

  private static Length length(String text, LengthUnit unit) {
    return Length.of(Double.parseDouble(text), unit);
  }
}
