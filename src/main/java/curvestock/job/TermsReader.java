package curvestock.job;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.piece.Demand;
import curvestock.purchase.StoreCuts;
import curvestock.units.Length;
import curvestock.units.Money;
import curvestock.units.TaxRate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code store-cuts:}, {@code tax:} and {@code spares:}. */
final class TermsReader {

  private static final BigDecimal MOST_TAX = BigDecimal.valueOf(100);
  private static final BigDecimal MOST_SPARE = BigDecimal.valueOf(1000);
  private static final int MOST_SPARES = 10_000;

  /** A panel saw's usual blade; common practice, no source. */
  private static final Length SAW = Length.ofInches(0.125);

  private static final Pattern PERCENT = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(%?)");

  private TermsReader() {}

  static Optional<StoreCuts> storeCuts(Field field) {
    return field
        .block("price", "tolerance", "kerf", "carry")
        .flatMap(
            block -> {
              Optional<Money> price = block.need("price", "price: 1.00").flatMap(Field::price);
              Optional<Length> tolerance =
                  block.need("tolerance", "tolerance: 1/8 in").flatMap(Lengths.KERF::read);
              Optional<Length> kerf = block.find("kerf").flatMap(Lengths.KERF::read);
              Optional<Box> carry =
                  block.need("carry", "carry: 60x48 in").flatMap(SheetSize::read).map(Outline::box);
              return block.build(
                  () ->
                      new StoreCuts(
                          price.orElseThrow(),
                          kerf.orElse(SAW),
                          tolerance.orElseThrow(),
                          Length.ofMillimetres(carry.orElseThrow().width()),
                          Length.ofMillimetres(carry.orElseThrow().height())));
            });
  }

  static Optional<TaxRate> tax(Field field) {
    String rule = "a rate in percent from 0 to 100, such as 8.25 %";
    return percent(field, rule, MOST_TAX).map(TaxRate::new);
  }

  /** A share of the whole, in percent. */
  static Optional<BigDecimal> share(Field field) {
    return percent(field, "a share in percent from 0 to 100, such as 40 %", MOST_TAX);
  }

  /** A number with or without a percent sign. */
  private static Optional<BigDecimal> percent(Field field, String rule, BigDecimal most) {
    Optional<String> text = field.written(rule);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher number = PERCENT.matcher(text.get().length() > 40 ? "" : text.get());
    if (number.matches() && new BigDecimal(number.group(1)).compareTo(most) <= 0) {
      return Optional.of(new BigDecimal(number.group(1)));
    }
    field.note("must be " + rule + ", but was " + Words.quoted(text.get()));
    return Optional.empty();
  }

  /**
   * @param wanted the pieces of the job, whose ids and names are the keys
   */
  static Optional<Spares> spares(Field field, List<Demand> wanted) {
    List<String> keys = new ArrayList<>(List.of(Spares.ALL));
    wanted.forEach(demand -> keys.add(demand.piece().id()));
    wanted.forEach(demand -> keys.add(demand.piece().name()));
    return field
        .block(keys.stream().distinct().toArray(String[]::new))
        .flatMap(
            block -> {
              Map<String, Spares.Spare> spares = new LinkedHashMap<>();
              for (String key : keys) {
                block
                    .find(key)
                    .flatMap(TermsReader::spare)
                    .ifPresent(spare -> spares.put(key, spare));
              }
              return block.build(() -> new Spares(spares));
            });
  }

  private static Optional<Spares.Spare> spare(Field field) {
    String rule = "a number of pieces such as 2, or a share of those wanted such as 10 %";
    Optional<String> text = field.written(rule);
    if (text.isPresent() && text.get().endsWith("%")) {
      return percent(field, rule, MOST_SPARE).map(share -> new Spares.Spare(0, share));
    }
    return text.isEmpty()
        ? Optional.empty()
        : field.whole(0, MOST_SPARES).map(count -> new Spares.Spare(count, BigDecimal.ZERO));
  }
}
