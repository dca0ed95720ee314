package curvestock.fuzz;

import java.util.List;
import java.util.SplittableRandom;

/** Texts made of what lengths are made of, in any order. */
public final class LengthNoise {

  private static final List<String> PARTS =
      List.of(
          "1",
          "27",
          "0",
          "00",
          "3/4",
          "1/0",
          "0/0",
          "/",
          ".",
          ".5",
          "5.",
          "1e9",
          "-",
          "+",
          "−",
          " ",
          "\u00a0",
          "\u2009",
          "\t",
          "in",
          "IN",
          "inch",
          "inches",
          "\"",
          "''",
          "″",
          "ft",
          "foot",
          "'",
          "’",
          "mm",
          "cm",
          "m",
          "metre",
          "millimeter",
          "km",
          "½",
          "⅞",
          "⁄",
          ",",
          "x",
          "½½",
          "٣",
          "ı",
          "İ",
          "ſ",
          "\ud83d\ude82",
          "999999999999",
          "0.0000000000001",
          "NaN",
          "Infinity",
          "0x1p3",
          "1d",
          "1f",
          "#",
          "\u0000");

  private final SplittableRandom random;

  public LengthNoise(long seed) {
    random = new SplittableRandom(seed);
  }

  /** The next text of up to eight parts; one in a hundred is very long. */
  public String next() {
    StringBuilder text = new StringBuilder();
    for (int n = random.nextInt(1, 9); n > 0; n--) {
      text.append(PARTS.get(random.nextInt(PARTS.size())));
    }
    return random.nextInt(100) == 0 ? text.toString().repeat(5_000) : text.toString();
  }
}
