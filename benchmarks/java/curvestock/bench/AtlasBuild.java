package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packed;
import curvestock.packing.PackedStore;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Makes the atlas of layouts, or goes on making it: each point of a grid is searched for more
 * pieces than the regular patterns and the atlas so far give; what is found goes into the {@link
 * AtlasTable}.
 *
 * <p>A point once searched with some budget is searched again only with a greater one.
 */
public final class AtlasBuild {

  private static final Path DONE = Settings.DATA.resolve("atlas-points.csv");

  private final long budget;
  private final SearchSettings settings;
  private final AtlasTable table;
  private final Map<String, Long> done = new HashMap<>();

  private AtlasBuild(long budget, long seed) throws IOException {
    this.budget = budget;
    this.settings = new SearchSettings(seed, Effort.QUICK);
    this.table = new AtlasTable(settings, budget / 8);
    if (Files.exists(DONE)) {
      for (String line : Files.readAllLines(DONE)) {
        if (!line.startsWith("#")) {
          String[] cells = line.split(",", -1);
          done.put(cells[0], Long.parseLong(cells[1]));
        }
      }
    }
  }

  /**
   * @param arguments pairs of pieces to test at each point; seed; pattern of the points' names;
   *     most processor seconds
   */
  public static void main(String[] arguments) throws IOException {
    AtlasBuild build = new AtlasBuild(Long.parseLong(arguments[0]), Long.parseLong(arguments[1]));
    Pattern only = Pattern.compile(arguments[2]);
    double seconds = Double.parseDouble(arguments[3]);
    double start = ProcessorTime.seconds();
    for (AtlasPoint point : AtlasPoint.grid()) {
      if (ProcessorTime.seconds() - start > seconds) {
        break;
      }
      if (only.matcher(point.toString()).find()
          && build.done.getOrDefault(point.toString(), 0L) < build.budget) {
        build.search(point);
      }
    }
  }

  private void search(AtlasPoint point) throws IOException {
    Piece piece = point.piece();
    SheetStock sheet = point.sheet();
    Packer packer =
        new Packers(PackedStore.NONE, table.atlas()).of(sheet, AtlasPoint.CUTTING, settings);
    int bound = Bound.quick(piece, sheet, AtlasPoint.CUTTING).count();
    int regular = packer.structured(piece).layout().placements().size();
    Packed best = packer.most(piece, bound, Control.NONE);
    boolean more = best.layout().placements().size() < bound;
    while (more) {
      Optional<Packed> found = packer.oneMore(piece, best, budget, Control.NONE);
      more = found.isPresent() && found.get().layout().placements().size() < bound;
      best = found.orElse(best);
    }
    int count = best.layout().placements().size();
    boolean kept = count > regular && table.keep(piece, best.layout());
    System.out.printf(
        "%s: patterns %d, found %d%s, %d charts, %.0f s%n",
        point, regular, count, kept ? ", kept" : "", table.size(), ProcessorTime.seconds());
    done.put(point.toString(), budget);
    save();
  }

  private void save() throws IOException {
    table.save();
    List<String> lines = new ArrayList<>();
    lines.add("# Points of the atlas that were searched, and with what budget: see AtlasBuild.");
    AtlasPoint.grid().stream()
        .filter(point -> done.containsKey(point.toString()))
        .forEach(point -> lines.add(point + "," + done.get(point.toString())));
    Files.write(DONE, lines);
  }
}
