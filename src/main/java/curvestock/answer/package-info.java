/**
 * The one answer: every figure that any output shows, worked out once, before anybody has chosen a
 * medium, a unit or a rounding for it.
 *
 * <p>Comes in: a plan, a whole helix, a comparison. Goes out: immutable records of typed tables
 * ({@link curvestock.answer.Table}) and quantities; the sentences on one subject stand in one class
 * beside it ({@code BuyingWords}, {@code HelixWords}, {@code BenchWords}, {@code CompareWords},
 * {@code Cautions}). May import everything up to {@code compare}, and no library. Papers, CSV,
 * JSON, HTML, PDF and the page render it and work nothing out. Start reading at {@link
 * curvestock.answer.Answer}.
 */
package curvestock.answer;
