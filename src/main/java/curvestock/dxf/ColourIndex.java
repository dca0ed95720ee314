package curvestock.dxf;

import java.util.HashSet;
import java.util.Set;

/**
 * The format's fixed list of colours, of which release 12 knows no others: an index for each layer.
 *
 * <p>Source: the list as programs commonly have it; 1 to 6 are the full colours, 7 is black or
 * white, whichever shows, 8 and 9 are greys. From 10 on ten shades of each of 24 hues follow, 15°
 * apart; even ones are full, odd ones half as saturated, each pair darker than the last. From
 * memory. The greys from 250 on differ between programs and are left out.
 */
final class ColourIndex {

  private static final int BLACK_OR_WHITE = 7;
  private static final int FIRST_SHADE = 10;
  private static final int LAST_SHADE = 249;
  private static final int SHADES = 10;
  private static final int HUES = 24;
  private static final int[] PLAIN = {
    0xff0000, 0xffff00, 0x00ff00, 0x00ffff, 0x0000ff, 0xff00ff, 0xffffff, 0x808080, 0xc0c0c0
  };

  /** Brightness of the five pairs of shades. */
  private static final int[] BRIGHT = {255, 165, 127, 76, 38};

  private final Set<Integer> taken = new HashSet<>();

  /** The nearest index to a colour {@code #rrggbb} that no other colour has yet. */
  int take(String colour) {
    int wanted = Integer.parseInt(colour.substring(1), 16);
    int best = BLACK_OR_WHITE;
    long least = Long.MAX_VALUE;
    for (int index = 1; index <= LAST_SHADE; index++) {
      long off = distance(wanted, index);
      if (off < least && !taken.contains(index)) {
        best = index;
        least = off;
      }
    }
    taken.add(best);
    return best;
  }

  private static long distance(int wanted, int index) {
    long off = squares(wanted, colour(index));
    return index == BLACK_OR_WHITE ? Math.min(off, squares(wanted, 0)) : off;
  }

  private static long squares(int a, int b) {
    long sum = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int off = (a >> shift & 0xff) - (b >> shift & 0xff);
      sum += (long) off * off;
    }
    return sum;
  }

  /** The colour of an index from 1 to 249, as 0xrrggbb. */
  static int colour(int index) {
    if (index < FIRST_SHADE) {
      return PLAIN[index - 1];
    }
    double hue = (index / SHADES - 1) * 6.0 / HUES;
    int bright = BRIGHT[index % SHADES / 2];
    boolean half = index % 2 == 1;
    return channel(hue, bright, half) << 16
        | channel(hue + 4, bright, half) << 8
        | channel(hue + 2, bright, half);
  }

  /** Full within a sixth of the circle of its own hue, nothing beyond a third. */
  private static int channel(double hue, int bright, boolean half) {
    double around = (hue + 3) % 6 - 3;
    double share = Math.max(0, Math.min(1, 2 - Math.abs(around)));
    return (int) (bright * (half ? 0.5 + 0.5 * share : share));
  }
}
