package curvestock.packing;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Packings of this run, kept in memory: a comparison asks for the same ones from several sides, and
 * whoever goes back in the page to what he had has his answer at once. Beyond a size those that
 * were not asked for longest go.
 */
public final class RecentPackings implements PackedStore {

  private final PackedStore beyond;
  private final long mostCharacters;
  private final Map<String, String> texts = new LinkedHashMap<>(16, 0.75f, true);
  private long characters;

  /**
   * @param beyond asked for what is not here, and told too; {@link PackedStore#NONE} for none
   * @param mostCharacters of keys and texts together
   */
  public RecentPackings(PackedStore beyond, long mostCharacters) {
    this.beyond = beyond;
    this.mostCharacters = mostCharacters;
  }

  @Override
  public Optional<String> find(String key) {
    Optional<String> here = here(key);
    if (here.isPresent()) {
      return here;
    }
    Optional<String> found = beyond.find(key);
    found.ifPresent(text -> put(key, text));
    return found;
  }

  @Override
  public void keep(String key, String text) {
    put(key, text);
    beyond.keep(key, text);
  }

  private synchronized Optional<String> here(String key) {
    return Optional.ofNullable(texts.get(key));
  }

  private synchronized void put(String key, String text) {
    String former = texts.put(key, text);
    characters += former == null ? key.length() + text.length() : text.length() - former.length();
    Iterator<Map.Entry<String, String>> oldest = texts.entrySet().iterator();
    while (characters > mostCharacters && oldest.hasNext()) {
      Map.Entry<String, String> entry = oldest.next();
      characters -= entry.getKey().length() + entry.getValue().length();
      oldest.remove();
    }
  }
}
