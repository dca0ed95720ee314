package curvestock.packing;

import java.util.Optional;

/**
 * Keeps packings between runs, as texts by key. Where it keeps them, and for how long, is its own
 * business; it may forget any at any time. What it gives back is proved anew before it is used.
 */
public interface PackedStore {

  /** Keeps nothing. */
  PackedStore NONE =
      new PackedStore() {
        @Override
        public Optional<String> find(String key) {
          return Optional.empty();
        }

        @Override
        public void keep(String key, String text) {
          // Nothing is kept.
        }
      };

  /** The text kept under the key, exactly as it was given; nothing if there is none. */
  Optional<String> find(String key);

  /**
   * Keeps the text under the key.
   *
   * @param key plain text that says all that the packing follows from; of any length
   */
  void keep(String key, String text);
}
