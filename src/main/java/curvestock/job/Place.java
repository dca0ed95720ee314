package curvestock.job;

import java.util.Comparator;

/** A place in a text, both counted from 1. */
record Place(int line, int column) implements Comparable<Place> {

  static final Place START = new Place(1, 1);

  private static final Comparator<Place> ORDER =
      Comparator.comparingInt(Place::line).thenComparingInt(Place::column);

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }
}
