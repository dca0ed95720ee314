package curvestock.bench;

import curvestock.geometry.Point;
import curvestock.piece.FreeShape;
import curvestock.piece.Grain;
import curvestock.piece.Piece;
import curvestock.units.Angle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A published strip-packing instance: pieces to be laid in a strip of fixed height, as short as can
 * be. Scaled so that the strip is {@link #HEIGHT} high.
 */
record Instance(String name, List<Piece> pieces) {

  /** Height of the strip after scaling, in millimetres. */
  static final double HEIGHT = 1000;

  /** Half turns are allowed: the grain of the sheet runs along the strip. */
  private static final Grain HALF_TURNS = new Grain(Angle.ofDegrees(0), Angle.ofDegrees(0));

  static Instance read(String name, double height, boolean freeRotation) throws IOException {
    Path file = Settings.DATA.resolve(name + ".csv");
    List<Piece> pieces = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      if (line.startsWith("#") || line.startsWith("piece,") || line.isBlank()) {
        continue;
      }
      String[] cells = line.split(",", 4);
      List<Point> corners = new ArrayList<>();
      for (String corner : cells[3].replace("\"", "").split(" ", -1)) {
        String[] xy = corner.split(",", -1);
        double scale = HEIGHT / height;
        corners.add(
            new Point(Double.parseDouble(xy[0]) * scale, Double.parseDouble(xy[1]) * scale));
      }
      Grain grain = freeRotation ? Grain.FREE : HALF_TURNS;
      Piece piece = new Piece(cells[0], cells[0], FreeShape.polygon(corners), grain);
      for (int k = 0; k < Integer.parseInt(cells[1]); k++) {
        pieces.add(piece);
      }
    }
    return new Instance(name, pieces);
  }

  double area() {
    return pieces.stream().mapToDouble(piece -> piece.shape().area()).sum();
  }
}
