package curvestock.bench;

/**
 * The best that was published on a strip-packing instance, and what share of it the engine is to
 * reach.
 *
 * @param height of the strip in the instance's own unit
 * @param density of the best layout published: pieces over strip height × length, 0 to 1
 * @param source where from; every value here is from memory
 * @param goal least share of the published density, 0 to 1
 */
record Published(String name, double height, double density, String source, double goal) {

  /**
   * A. Elkeran, A new approach for sheet nesting problem using guided cuckoo search and pairwise
   * clustering, European Journal of Operational Research 231 (2013), 757 to 769. Half turns
   * allowed. From memory.
   */
  private static final String ELKERAN = "Elkeran 2013, from memory";

  /**
   * The jigsaws are a cut-up rectangle, so the best is known: R. B. Dighe and M. J. Jakiela,
   * Solving pattern nesting problems with genetic algorithms employing task decomposition and
   * contact detection, Evolutionary Computation 3 (1996), 239 to 266. From memory. No turns allowed
   * there, half turns here.
   */
  private static final String JIGSAW = "by construction; Dighe and Jakiela 1996, from memory";

  static final Published[] ALL = {
    new Published("albano", 4900, 0.8958, ELKERAN, 0.97),
    new Published("blaz", 15, 0.8484, ELKERAN + ", there called Shapes 2", 0.97),
    new Published("dagli", 60, 0.8951, ELKERAN, 0.97),
    new Published("dighe1", 100, 1, JIGSAW, 0.95),
    new Published("dighe2", 100, 1, JIGSAW, 0.95),
  };
}
