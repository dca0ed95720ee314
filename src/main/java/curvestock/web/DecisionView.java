package curvestock.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.DecisionWords;
import curvestock.answer.Figures;
import curvestock.compare.Division;
import curvestock.compare.EnclosingRectangle;
import curvestock.compare.JointPrice;
import curvestock.compare.SegmentOption;
import curvestock.compare.SizeLook;
import curvestock.drawing.PieceFigure;
import curvestock.geometry.Box;
import curvestock.piece.Piece;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Optional;

/** The decision as the page draws it: a card for each segment size, and the sentence under them. */
final class DecisionView {

  private static final double QUARTER_INCH = 25.4 / 4;
  private static final double FIVE = 5;

  private final ObjectNode root = Json.object();
  private final ArrayNode cards;
  private final ArrayNode sentences;
  private final Figures figures;
  private final Optional<Division> best;

  DecisionView(Asked asked, JointPrice joint, Optional<Division> best, boolean complete) {
    this.figures = new Figures(asked.job().style(), asked.job().currency());
    this.best = best;
    root.put("fingerprint", asked.fingerprint());
    root.put("complete", complete);
    root.put("joint", new DecisionWords(asked.job()).joint(joint));
    root.put("jointAssumed", joint.assumed());
    this.sentences = root.putArray("sentences");
    this.cards = root.putArray("sizes");
  }

  void say(String sentence) {
    sentences.add(sentence);
  }

  void planned(SegmentOption option, boolean own) {
    ObjectNode card = card(option.division(), own, "plan");
    counted(card, option.sheets(), option.sheetCost(), option.joints(), option.pieces());
    card.put("perSheet", option.perSheet());
    shape(card, option.segment(), option.largest());
  }

  void look(SizeLook look, boolean own) {
    ObjectNode card = card(look.division(), own, "pattern");
    counted(card, look.sheets(), look.paid(), look.joints(), look.pieces());
    card.put("perSheet", look.perSheet());
    shape(card, look.segment(), look.largest());
  }

  void refused(Division division, String why, boolean own) {
    card(division, own, "impossible").put("why", why);
  }

  private ObjectNode card(Division division, boolean own, String state) {
    return cards
        .addObject()
        .put("name", DecisionWords.card(division))
        .put("degrees", division.segment().degrees())
        .put("mixed", division.isMixed())
        .put("own", own)
        .put("best", best.equals(Optional.of(division)))
        .put("state", state);
  }

  private void counted(ObjectNode card, int sheets, Money paid, int joints, int pieces) {
    card.put("sheets", sheets);
    card.put("money", paid.equals(Money.ZERO) ? "on hand" : figures.money(paid));
    card.put("joints", joints);
    card.put("pieces", pieces);
  }

  private void shape(ObjectNode card, Piece segment, EnclosingRectangle largest) {
    card.put("largest", figures.sides(upwards(largest.length()), upwards(largest.width())));
    Box box = segment.shape().outline().box();
    card.put("outline", PieceFigure.of(segment, "8").outline());
    card.putArray("box")
        .add(box.minX())
        .add(-box.maxY())
        .add(box.maxX() - box.minX())
        .add(box.maxY() - box.minY());
  }

  /** To a quarter of an inch or 5 mm more: whether it passes a door needs no more. */
  private Length upwards(Length length) {
    double step = figures.isImperial() ? QUARTER_INCH : FIVE;
    return Length.ofMillimetres(Math.ceil(length.millimetres() / step - 1e-9) * step);
  }

  ObjectNode json() {
    return root;
  }
}
