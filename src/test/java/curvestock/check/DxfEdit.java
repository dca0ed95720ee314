package curvestock.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** A DXF file taken apart, changed as a careless person or another program would, and written. */
final class DxfEdit {

  /** A group: its code and its value. */
  record Pair(int code, String value) {}

  /** An entity with all that belongs to it: a polyline with its corners. */
  record Entity(List<Pair> pairs) {

    String name() {
      return pairs.get(0).value();
    }

    String layer() {
      return pairs.stream().filter(p -> p.code() == 8).findFirst().orElseThrow().value();
    }

    Entity copy() {
      return new Entity(new ArrayList<>(pairs));
    }

    /** Adds to each number of a code. */
    Entity moved(int code, double by) {
      pairs.replaceAll(
          p ->
              p.code() == code
                  ? new Pair(code, Double.toString(Double.parseDouble(p.value()) + by))
                  : p);
      return this;
    }

    /** Puts a group behind the layer's name. */
    Entity with(int code, String value) {
      pairs.add(2, new Pair(code, value));
      return this;
    }

    Entity onLayer(String layer) {
      pairs.replaceAll(p -> p.code() == 8 ? new Pair(8, layer) : p);
      return this;
    }
  }

  final List<Pair> head = new ArrayList<>();
  final List<Entity> entities = new ArrayList<>();

  static DxfEdit of(String text) {
    DxfEdit edit = new DxfEdit();
    String[] lines = text.split("\r\n", -1);
    int i = 0;
    while (!(lines[i].strip().equals("2") && lines[i + 1].equals("ENTITIES"))) {
      edit.head.add(new Pair(Integer.parseInt(lines[i].strip()), lines[i + 1]));
      i += 2;
    }
    edit.head.add(new Pair(2, "ENTITIES"));
    for (i += 2; !lines[i + 1].equals("ENDSEC"); i += 2) {
      Pair pair = new Pair(Integer.parseInt(lines[i].strip()), lines[i + 1]);
      boolean within = pair.value().equals("VERTEX") || pair.value().equals("SEQEND");
      if (pair.code() == 0 && !within) {
        edit.entities.add(new Entity(new ArrayList<>()));
      }
      edit.entities.get(edit.entities.size() - 1).pairs().add(pair);
    }
    return edit;
  }

  static String change(String text, Consumer<DxfEdit> change) {
    DxfEdit edit = of(text);
    change.accept(edit);
    return edit.text("\r\n");
  }

  List<Entity> on(String layer) {
    return entities.stream().filter(entity -> entity.layer().equals(layer)).toList();
  }

  DxfEdit dropComments() {
    head.removeIf(pair -> pair.code() == 999);
    return this;
  }

  DxfEdit header(String variable, int code, String value) {
    int at = head.indexOf(new Pair(2, "HEADER")) + 1;
    head.add(at, new Pair(9, variable));
    head.add(at + 1, new Pair(code, value));
    return this;
  }

  DxfEdit remove(Predicate<Entity> which) {
    entities.removeIf(which);
    return this;
  }

  /** Every polyline as later releases write it. */
  DxfEdit lightweight() {
    entities.replaceAll(DxfEdit::lightweight);
    return this;
  }

  private static Entity lightweight(Entity old) {
    if (!old.name().equals("POLYLINE")) {
      return old;
    }
    List<Pair> pairs = new ArrayList<>(List.of(new Pair(0, "LWPOLYLINE"), new Pair(5, "2F")));
    pairs.add(new Pair(100, "AcDbEntity"));
    pairs.add(new Pair(8, old.layer()));
    pairs.add(new Pair(100, "AcDbPolyline"));
    boolean inVertex = false;
    for (Pair pair : old.pairs()) {
      inVertex |= pair.value().equals("VERTEX");
      if (pair.code() == 70 || (inVertex && List.of(10, 20, 42).contains(pair.code()))) {
        pairs.add(pair);
      }
    }
    return new Entity(pairs);
  }

  /** Every number once more in another way of writing it. */
  DxfEdit exponents() {
    for (Entity entity : entities) {
      entity
          .pairs()
          .replaceAll(
              p ->
                  p.code() >= 10 && p.code() < 60
                      ? new Pair(
                          p.code(),
                          String.format(Locale.ROOT, "%.15E", Double.parseDouble(p.value())))
                      : p);
    }
    return this;
  }

  String text(String end) {
    StringBuilder text = new StringBuilder();
    head.forEach(p -> text.append(p.code()).append(end).append(p.value()).append(end));
    entities.forEach(
        e ->
            e.pairs()
                .forEach(p -> text.append(p.code()).append(end).append(p.value()).append(end)));
    return text + "0" + end + "ENDSEC" + end + "0" + end + "EOF" + end;
  }
}
