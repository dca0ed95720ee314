package curvestock.plan;

import curvestock.job.Job;
import curvestock.piece.Demand;
import curvestock.purchase.Product;
import curvestock.purchase.Purchase;
import curvestock.purchase.PurchaseLine;
import curvestock.purchase.ShortageException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What to tell a person whose sheets do not suffice. */
final class Shortage {

  private final Job job;
  private final List<Demand> missing;

  Shortage(Job job, List<Demand> missing) {
    this.job = job;
    this.missing = missing;
  }

  /**
   * What is missing, and for each limited sheet how many of it would do.
   *
   * @param cheapest the purchase from other products; it may lack layouts for them
   */
  List<String> sentences(Function<List<Product>, Purchase> cheapest, List<Product> products) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        missing.stream()
            .map(demand -> demand.count() + " x " + demand.piece().id())
            .collect(
                Collectors.joining(
                    ", ",
                    "There are not enough sheets. With the layouts found, these pieces are still missing: ",
                    ".")));
    for (Product product : products) {
      if (product.stock().available().orElse(0) > 0) {
        enough(cheapest, products, product)
            .ifPresent(
                count ->
                    sentences.add(
                        "%s of %s instead of %s would be enough."
                            .formatted(count, product.stock().name(), product.available())));
      }
    }
    sentences.add(
        job.spares().byPiece().isEmpty()
            ? "Raise `available:` of a sheet, or add one to `sheets:` that you can buy."
            : "Raise `available:` of a sheet, add one to `sheets:` that you can buy, or ask for fewer"
                + " spares.");
    return sentences;
  }

  private OptionalInt enough(
      Function<List<Product>, Purchase> cheapest, List<Product> products, Product limited) {
    int pieces = job.demands().stream().mapToInt(Demand::count).sum();
    Product more = limited.withAvailable(Math.addExact(limited.available(), pieces));
    List<Product> offers =
        products.stream().map(product -> product.equals(limited) ? more : product).toList();
    try {
      return cheapest.apply(offers).lines().stream()
          .filter(line -> line.product().equals(more))
          .mapToInt(PurchaseLine::used)
          .filter(used -> used > limited.available())
          .findFirst();
    } catch (ShortageException e) {
      return OptionalInt.empty();
    }
  }
}
