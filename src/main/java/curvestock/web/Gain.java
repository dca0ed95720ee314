package curvestock.web;

import curvestock.plan.Plan;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;

/** What a longer search gained over a shorter one, in plain words. */
final class Gain {

  private static final String[] NUMBERS = {"no", "one", "two", "three", "four", "five"};

  private Gain() {}

  static String words(Plan before, Plan after, String currency) {
    List<String> gains = new ArrayList<>();
    int sheets = before.layouts().size() - after.layouts().size();
    if (sheets > 0) {
      String number = sheets < NUMBERS.length ? NUMBERS[sheets] : Integer.toString(sheets);
      gains.add(number + (sheets == 1 ? " sheet less" : " sheets less"));
    }
    Money saved = before.cost().paid().minus(after.cost().paid());
    if (saved.minorUnits() > 0) {
      gains.add(saved.format(currency) + " saved");
    }
    return gains.isEmpty()
        ? "The longer search found nothing cheaper."
        : "The search gained: " + String.join(", ", gains) + ".";
  }
}
