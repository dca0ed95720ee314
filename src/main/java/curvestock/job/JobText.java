package curvestock.job;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.comments.CommentLine;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * A job file as a tree of maps, lists and texts, for programs that change some fields and keep all
 * others, and the tree as a job file again.
 *
 * <p>Every value is the text that was written, so nothing drifts: {@code 27 1/2} stays that.
 * Comments of the file that a tree came from are kept; spacing is not.
 */
public final class JobText {

  private static final int LINE = 100;

  /** What the YAML writer would set a tag before, since versions of YAML read it differently. */
  private static final Pattern OCTAL = Pattern.compile("[-+]?0[0-9_]+");

  private static final Pattern INVENTED =
      Pattern.compile("\\b(invented|made up)\\b", Pattern.CASE_INSENSITIVE);

  private JobText() {}

  /**
   * The file's tree: {@code Map<String, Object>}, {@code List<Object>} and {@code String}.
   *
   * @throws JobException if the text is no tree of keys; whether it is a right job is not asked
   */
  public static Map<String, Object> tree(String text, String fileName) {
    Problems problems = new Problems(fileName);
    Optional<Node> root = TreeReader.read(text, problems);
    if (root.isPresent() && !(root.get() instanceof Node.Mapping)) {
      problems.add(
          root.get().place(), "", "a job file must be a block of keys that begins `curvestock: 2`");
    }
    problems.throwIfAny();
    return mapping((Node.Mapping) root.orElseThrow());
  }

  private static Map<String, Object> mapping(Node.Mapping mapping) {
    Map<String, Object> map = new LinkedHashMap<>();
    mapping.entries().forEach(entry -> map.put(entry.key(), value(entry.value())));
    return map;
  }

  private static Object value(Node node) {
    if (node instanceof Node.Mapping mapping) {
      return mapping(mapping);
    }
    if (node instanceof Node.Items items) {
      return items.items().stream().map(JobText::value).toList();
    }
    return ((Node.Text) node).text();
  }

  /**
   * The tree as the text of a job file.
   *
   * @param original the file that the tree came from, whose comments and order are kept; may be
   *     empty
   * @throws JobException if the original is no tree of keys
   */
  public static String written(String original, Map<String, Object> tree) {
    org.yaml.snakeyaml.nodes.Node root;
    if (original.isBlank()) {
      root = fresh(tree, 0);
    } else {
      // Refuses anchors, tags and the like, which merging could not keep.
      tree(original, "the original");
      root = merged(yaml().compose(new StringReader(original)), tree, 0);
    }
    StringWriter out = new StringWriter();
    yaml().serialize(root, out);
    return out.toString();
  }

  private static Yaml yaml() {
    LoaderOptions reading = new LoaderOptions();
    reading.setProcessComments(true);
    reading.setNestingDepthLimit(TreeReader.DEEPEST + 1);
    DumperOptions writing = new DumperOptions();
    writing.setProcessComments(true);
    writing.setWidth(LINE);
    writing.setIndent(4);
    writing.setIndicatorIndent(2);
    writing.setSplitLines(false);
    return new Yaml(
        new org.yaml.snakeyaml.constructor.SafeConstructor(reading),
        new org.yaml.snakeyaml.representer.Representer(writing),
        writing,
        reading);
  }

  private static org.yaml.snakeyaml.nodes.Node merged(
      org.yaml.snakeyaml.nodes.Node node, Object value, int depth) {
    if (value instanceof Map<?, ?> map && node instanceof MappingNode mapping) {
      mapping.setValue(mergedTuples(mapping, map, depth));
      return mapping;
    }
    if (value instanceof List<?> list && node instanceof SequenceNode sequence) {
      List<org.yaml.snakeyaml.nodes.Node> items = sequence.getValue();
      for (int i = 0; i < list.size(); i++) {
        if (i < items.size()) {
          items.set(i, merged(items.get(i), list.get(i), depth + 1));
        } else {
          items.add(fresh(list.get(i), depth + 1));
        }
      }
      items.subList(list.size(), items.size()).clear();
      return sequence;
    }
    if (node instanceof ScalarNode scalar
        && scalar.getValue().equals(value)
        && !OCTAL.matcher(scalar.getValue()).matches()) {
      return scalar;
    }
    org.yaml.snakeyaml.nodes.Node changed = fresh(value, depth);
    changed.setInLineComments(stillTrue(node.getInLineComments()));
    changed.setBlockComments(node.getBlockComments());
    changed.setEndComments(node.getEndComments());
    return changed;
  }

  /** A remark that a figure is made up does not stay beside another figure. */
  private static List<CommentLine> stillTrue(List<CommentLine> comments) {
    return comments == null
        ? null
        : comments.stream().filter(line -> !INVENTED.matcher(line.getValue()).find()).toList();
  }

  private static List<NodeTuple> mergedTuples(MappingNode mapping, Map<?, ?> map, int depth) {
    List<NodeTuple> tuples = new ArrayList<>();
    List<String> kept = new ArrayList<>();
    for (NodeTuple tuple : mapping.getValue()) {
      String key = ((ScalarNode) tuple.getKeyNode()).getValue();
      if (map.containsKey(key)) {
        kept.add(key);
        tuples.add(
            new NodeTuple(
                tuple.getKeyNode(), merged(tuple.getValueNode(), map.get(key), depth + 1)));
      }
    }
    map.forEach(
        (key, value) -> {
          if (!kept.contains(key)) {
            tuples.add(new NodeTuple(scalar((String) key), fresh(value, depth + 1)));
          }
        });
    return tuples;
  }

  /** Blocks down to the fields of a helix or a sheet, short flows below. */
  private static org.yaml.snakeyaml.nodes.Node fresh(Object value, int depth) {
    boolean deep = depth > 1;
    if (value instanceof Map<?, ?> map) {
      List<NodeTuple> tuples = new ArrayList<>();
      map.forEach(
          (key, each) -> tuples.add(new NodeTuple(scalar((String) key), fresh(each, depth + 1))));
      FlowStyle style = deep && map.size() <= 3 ? FlowStyle.FLOW : FlowStyle.BLOCK;
      return new MappingNode(Tag.MAP, tuples, style);
    }
    if (value instanceof List<?> list) {
      List<org.yaml.snakeyaml.nodes.Node> items = new ArrayList<>();
      list.forEach(each -> items.add(fresh(each, depth + 1)));
      boolean blocks = list.stream().anyMatch(Map.class::isInstance);
      return new SequenceNode(Tag.SEQ, items, blocks ? FlowStyle.BLOCK : FlowStyle.FLOW);
    }
    return scalar((String) value);
  }

  private static ScalarNode scalar(String text) {
    Tag tag = new Resolver().resolve(NodeId.scalar, text, true);
    boolean plain =
        !tag.equals(Tag.NULL)
            && !tag.equals(Tag.MERGE)
            && !text.startsWith("!")
            && !OCTAL.matcher(text).matches();
    ScalarStyle style =
        text.contains("\n")
            ? ScalarStyle.LITERAL
            : plain ? ScalarStyle.PLAIN : ScalarStyle.DOUBLE_QUOTED;
    return new ScalarNode(plain ? tag : Tag.STR, text, null, null, style);
  }
}
