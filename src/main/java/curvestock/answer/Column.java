package curvestock.answer;

/**
 * A column of a table.
 *
 * @param key its name in data, in camel case; never changes without a new format number
 * @param title its heading for people
 * @param measure what its cells hold
 */
public record Column(String key, String title, Measure measure) {}
