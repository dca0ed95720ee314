package curvestock.plan;

/**
 * A sentence of advice in two wordings.
 *
 * @param inFile for who writes a job file: with its keys
 * @param onPage for who fills in the page: with its fields
 */
record Told(String inFile, String onPage) {

  /** One that names neither keys nor fields. */
  static Told alike(String words) {
    return new Told(words, words);
  }
}
