package dev.offtake.explain;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.cause.find.Found;
import dev.offtake.quantity.Style;
import java.util.List;

/** The table {@code READ AGAINST} as JSON: words ready to be shown, no finer than the gauge. */
final class FindAgainst {
  /** As many groups as a person compares at a time. */
  private static final int GROUPS = 3;

  private FindAgainst() {}

  /**
   * Puts the table.
   *
   * @param node receives it
   * @param view what was found
   * @param style units of the words
   */
  static void put(ObjectNode node, FindView view, Style style) {
    List<Found.Group> groups = view.lettered().stream().limit(GROUPS).toList();
    ArrayNode letters = node.putArray("letters");
    for (int i = 0; i < groups.size(); i++) {
      letters.add(FindView.letter(i));
    }
    ArrayNode rows = node.putArray("rows");
    List<Integer> leads = groups.stream().map(group -> group.members().get(0)).toList();
    for (int i = 0; i < view.found().looks().size(); i++) {
      if (!view.found().recorded(view.found().looks().get(i))) {
        row(rows.addObject(), view.found(), i, leads, style);
      }
    }
  }

  private static void row(
      ObjectNode node, Found found, int number, List<Integer> leads, Style style) {
    Found.Look look = found.looks().get(number);
    var scene = found.scenes().get(look.scene());
    FindValue value = new FindValue(look, scene.trip().trip(), style);
    List<Double> foretold =
        leads.stream().map(lead -> found.ranked().get(lead).foretold().get(number)).toList();
    node.put("what", value.name()).put("where", scene.name()).put("unit", value.unit());
    node.put("read", value.read()).put("healthy", value.foretold(look.sound()));
    ArrayNode all = node.putArray("foretold");
    foretold.forEach(si -> all.add(value.foretold(si)));
    node.put("parts", foretold.size() > 1 && value.parts(foretold, found.system().modelError()));
  }
}
