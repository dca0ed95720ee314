package curvestock.helix.build;

import curvestock.geometry.Edge;
import curvestock.piece.AnnularSector;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import java.util.ArrayList;
import java.util.List;

/** Sorts pieces into kinds that are cut alike: same outline, same holes, within rounding. */
final class PieceKinds {

  /** Pieces that differ by less than a ten-thousandth of a millimetre are cut alike. */
  private static final double ALIKE = 1e-4;

  private final List<PieceKind> kinds = new ArrayList<>();

  /** Counts a piece and gives the id of its kind. */
  String add(String name, Shape blank, List<Hole> holes) {
    for (int i = 0; i < kinds.size(); i++) {
      PieceKind kind = kinds.get(i);
      if (alike(kind.blank(), blank) && alike(kind.holes(), holes)) {
        kinds.set(i, kind.plus(1));
        return kind.id();
      }
    }
    PieceKind kind = new PieceKind(id(kinds.size()), unlike(name, blank), blank, holes, 1);
    kinds.add(kind);
    return kind.id();
  }

  /** Pieces of one outline whose holes differ are told apart by the number of their pattern. */
  private String unlike(String name, Shape blank) {
    long before = kinds.stream().filter(kind -> alike(kind.blank(), blank)).count();
    return before == 0 ? name : name + ", hole pattern " + (before + 1);
  }

  List<PieceKind> all() {
    return List.copyOf(kinds);
  }

  /** R1, R2, ...: never an id that a job gives to a piece listed by itself. */
  private static String id(int index) {
    return "R" + (index + 1);
  }

  private static boolean alike(Shape a, Shape b) {
    if (a instanceof AnnularSector s && b instanceof AnnularSector t) {
      return near(s.radius().millimetres(), t.radius().millimetres())
          && near(s.width().millimetres(), t.width().millimetres())
          && near(s.chord().millimetres(), t.chord().millimetres())
          && Math.abs(s.sweep().degrees() - t.sweep().degrees()) < ALIKE;
    }
    if (a instanceof Strip s && b instanceof Strip t) {
      return near(s.length().millimetres(), t.length().millimetres())
          && near(s.width().millimetres(), t.width().millimetres());
    }
    return a.getClass() == b.getClass() && alikeEdges(a.outline().edges(), b.outline().edges());
  }

  private static boolean alikeEdges(List<Edge> a, List<Edge> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i).start().distance(b.get(i).start()) > ALIKE
          || !near(a.get(i).length(), b.get(i).length())) {
        return false;
      }
    }
    return true;
  }

  private static boolean alike(List<Hole> a, List<Hole> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i).centre().distance(b.get(i).centre()) > ALIKE
          || !near(a.get(i).diameter().millimetres(), b.get(i).diameter().millimetres())) {
        return false;
      }
    }
    return true;
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= ALIKE;
  }
}
