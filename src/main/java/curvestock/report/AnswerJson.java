package curvestock.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.Answer;
import curvestock.answer.Building;
import curvestock.answer.Buying;
import curvestock.answer.BuyingWords;
import curvestock.answer.Choices;
import curvestock.answer.CompareWords;
import curvestock.answer.Figures;
import curvestock.answer.HelixWords;
import curvestock.helix.verdict.Verdict.State;
import curvestock.purchase.Cost;
import java.util.List;

/** The answer for a screen: typed figures, each beside how it is written; sentences whole. */
public final class AnswerJson {

  private AnswerJson() {}

  /** What to buy, and what is proven. */
  public static ObjectNode buying(Answer answer) {
    Buying buying = answer.bought();
    Figures figures = answer.figures();
    BuyingWords words = new BuyingWords(answer);
    ObjectNode root = TableJson.MAPPER.createObjectNode();
    root.put("decision", words.decision());
    root.put("money", figures.money(buying.cost().paid()));
    root.put("proof", words.proof());
    root.put("sheetsProof", words.sheetsProof());
    root.put("used", words.used());
    root.put("sheets", buying.sheets());
    root.put("pieces", buying.pieces());
    root.put("stopped", buying.stopped());
    cost(root.putObject("cost"), buying.cost());
    texts(root.putArray("remarks"), words.remarks());
    root.set(
        "purchase",
        TableJson.shown(
            buying.purchase().only("sheet", "length", "width", "bought", "cost"), figures));
    root.set(
        "perSheet",
        TableJson.shown(
            buying.perSheet().only("kind", "sheet", "found", "standing", "limit"), figures));
    return root;
  }

  /** Money in minor units. */
  static void cost(ObjectNode node, Cost cost) {
    node.put("net", cost.net().minorUnits());
    node.put("tax", cost.onTop().minorUnits());
    node.put("paid", cost.paid().minorUnits());
    node.put("leastPaid", cost.leastPaid().minorUnits());
    node.put("leastSheets", cost.leastSheets());
    node.put("proof", cost.proof());
  }

  /** Whether the helix works, and what it takes. */
  public static ObjectNode building(Answer answer) {
    Building helix = answer.building().orElseThrow();
    Figures figures = answer.figures();
    ObjectNode root = TableJson.MAPPER.createObjectNode();
    root.put("works", helix.works());
    root.put("decision", new HelixWords(helix, figures).decision());
    root.put("marginal", helix.count(State.MARGINAL));
    root.set("figures", TableJson.shown(helix.figures(), figures));
    root.set("verdicts", TableJson.shown(helix.checks(), figures));
    root.set("assumed", TableJson.shown(helix.assumed(), figures));
    root.set("shopping", TableJson.shown(answer.shopping(), figures));
    root.set(
        "schedule",
        TableJson.shown(
            helix
                .schedule()
                .only(
                    "piece",
                    "turn",
                    "bearingFrom",
                    "bearingTo",
                    "undersideFrom",
                    "undersideTo",
                    "lowerJoint",
                    "upperJoint"),
            figures));
    return root;
  }

  /** The segment sizes side by side. */
  public static ObjectNode choices(Choices choices) {
    CompareWords words = new CompareWords(choices);
    ObjectNode root = TableJson.MAPPER.createObjectNode();
    root.put("sheet", choices.comparison().mainSheet().name());
    words.decision().ifPresent(decision -> root.put("decision", decision));
    texts(root.putArray("reasons"), words.reasons());
    texts(root.putArray("sensitivity"), words.sensitivity());
    texts(root.putArray("remarks"), words.remarks());
    choices.comparison().best().ifPresent(best -> root.put("best", best.angle().degrees()));
    root.set(
        "options",
        TableJson.shown(
            choices
                .options()
                .only(
                    "segment",
                    "best",
                    "angle",
                    "lowerCount",
                    "sheets",
                    "cost",
                    "joints",
                    "perSheet",
                    "limit",
                    "largestLength",
                    "largestWidth"),
            choices.heading().figures()));
    return root;
  }

  private static void texts(ArrayNode array, List<String> texts) {
    texts.forEach(array::add);
  }
}
