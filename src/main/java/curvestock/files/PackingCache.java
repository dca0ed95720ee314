package curvestock.files;

import curvestock.packing.PackedStore;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Packings kept on disk between runs. */
public final class PackingCache implements PackedStore {

  /** All entries together, in bytes. */
  private static final long MOST_BYTES = 64L << 20;

  private static final int LONGEST_ENTRY = 4 << 20;

  private final CacheFolder folder;

  PackingCache(CacheFolder folder) {
    this.folder = folder;
  }

  /** The user's own; nothing where none can be kept. */
  public static Optional<PackedStore> ofUser() {
    return CacheFolder.ofUser(".packing", LONGEST_ENTRY, MOST_BYTES).map(PackingCache::new);
  }

  @Override
  public Optional<String> find(String key) {
    return folder.find(key).map(bytes -> new String(bytes, StandardCharsets.UTF_8));
  }

  @Override
  public void keep(String key, String text) {
    folder.keep(key, text.getBytes(StandardCharsets.UTF_8));
  }
}
