package dev.offtake.explain;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.cause.Recording;
import dev.offtake.cause.find.Advice;
import dev.offtake.cause.find.Check;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Ranked;
import dev.offtake.part.Access;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import java.time.LocalDate;
import java.util.List;

/** What a search found as JSON, its layout numbered by {@code offtake find}. */
public final class FindJson {
  /** Number of the layout; raised when a field changes its meaning or goes. */
  public static final int LAYOUT = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final FindView view;
  private final Found found;
  private final Style style;
  private final FindWords words;
  private final CheckWords checks;

  private FindJson(Found found, Style style) {
    view = FindView.of(found);
    this.found = found;
    this.style = style;
    words = new FindWords(style);
    checks = new CheckWords(view, style);
  }

  /**
   * Makes the document; numbers in SI, words in the units of the style.
   *
   * @param found what was found
   * @param manner units of the words, the day of today, and what else has to be said
   */
  public static String print(Found found, FindText.Manner manner) {
    return new FindJson(found, manner.style()).document(manner).toPrettyString();
  }

  private ObjectNode document(FindText.Manner manner) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("offtake find", LAYOUT);
    root.put("title", found.system().title());
    root.put("squawk", found.readings().squawk());
    root.put("item", found.readings().item());
    found.readings().date().ifPresent(date -> root.put("date", date.toString()));
    strings(root.putArray("notes"), manner.notes());
    strings(root.putArray("warnings"), FindText.warnings(found.system(), style));
    strings(root.putArray("answer"), new FindHeadline(view, style).sentences());
    root.put("explained", found.explained());
    root.put("nothing wrong", found.nothing());
    root.put("none of these", found.none());
    root.put("hides", view.hides());
    causes(root.putArray("causes"));
    groups(root.putArray("groups"));
    units(root.putArray("units"));
    looks(root.putArray("readings"));
    recorded(root.putArray("recorded"));
    FindAgainst.put(root.putObject("read against"), view, style);
    strings(root.putArray("gauge cautions"), gaugeCautions(manner.today()));
    advice(root.putObject("advice"));
    strings(root.putArray("stands on"), new FindStands(found, style).sentences());
    root.put("caution", StateAnswer.CAUTION);
    return root;
  }

  private List<String> gaugeCautions(LocalDate today) {
    return found.readings().cautions(today);
  }

  private static void strings(ArrayNode array, List<String> texts) {
    texts.stream().filter(text -> !text.isEmpty()).forEach(array::add);
  }

  private void causes(ArrayNode nodes) {
    for (Ranked ranked : found.ranked()) {
      ObjectNode node = nodes.addObject();
      node.put("chance", ranked.chance());
      node.put("words", words.cause(ranked));
      node.put("dormant", ranked.dormant());
      ArrayNode faults = node.putArray("faults");
      for (int i = 0; i < ranked.best().size(); i++) {
        fault(faults.addObject(), ranked, i);
      }
      ArrayNode foretold = node.putArray("foretells");
      for (int i = 0; i < ranked.foretold().size(); i++) {
        if (!found.recorded(found.looks().get(i))) {
          number(foretold, ranked.foretold().get(i));
        }
      }
    }
  }

  private static void fault(ObjectNode node, Ranked ranked, int number) {
    Fault best = ranked.best().get(number);
    node.put("part", best.part().name());
    node.put("unit", best.mode().unit());
    node.put("mode", best.mode().name());
    node.put("if", best.words(Style.SHOP));
    if (best.mode().extent() != null) {
      node.put("extent", best.extent());
      node.put("from", ranked.low().get(number).extent());
      node.put("to", ranked.high().get(number).extent());
    }
  }

  /** What has no value is a text, so that the places of a list keep their meaning. */
  private static void number(ArrayNode nodes, double value) {
    if (Double.isFinite(value)) {
      nodes.add(value);
    } else {
      nodes.add("unknown");
    }
  }

  private void groups(ArrayNode nodes) {
    for (Found.Group group : found.groups()) {
      ObjectNode node = nodes.addObject();
      int letter = view.lettered().indexOf(group);
      node.put("letter", letter < 0 ? "" : FindView.letter(letter));
      node.put("chance", group.chance());
      node.put("looks sound", group.asSound());
      ArrayNode members = node.putArray("causes");
      group.members().forEach(members::add);
    }
  }

  private void units(ArrayNode nodes) {
    for (Found.UnitChance unit : found.units()) {
      nodes
          .addObject()
          .put("part", unit.part())
          .put("unit", unit.unit())
          .put("words", FindWords.unit(found.system(), unit.part(), unit.unit()))
          .put("chance", unit.chance());
    }
  }

  private void looks(ArrayNode nodes) {
    for (Found.Look look : found.looks()) {
      if (found.recorded(look)) {
        continue;
      }
      var scene = found.scenes().get(look.scene());
      FindValue value = new FindValue(look, scene.trip().trip(), style);
      ObjectNode node = nodes.addObject();
      node.put("what", value.name());
      node.put("where", scene.name());
      node.put("read", value.read());
      node.put("unit", value.unit());
      if (Double.isFinite(look.sound())) {
        node.put("healthy", look.sound());
      }
      node.put("does not fit", look.odd());
    }
  }

  private void recorded(ArrayNode nodes) {
    for (Recording recording : found.readings().recordings()) {
      for (Recording.Channel channel : recording.channels()) {
        ObjectNode node = nodes.addObject();
        node.put("file", recording.file()).put("profile", recording.run());
        node.put("what", channel.about().name());
        apart(node.putObject("healthy"), FindRecorded.apart(found, recording, channel, -1));
        ArrayNode causes = node.putArray("causes");
        for (int i = 0; i < found.ranked().size(); i++) {
          apart(causes.addObject(), FindRecorded.apart(found, recording, channel, i));
        }
      }
    }
  }

  private static void apart(ObjectNode node, FindRecorded.Apart apart) {
    node.put("most", apart.most()).put("at", apart.at()).put("mean", apart.mean());
  }

  private void advice(ObjectNode node) {
    Advice advice = found.advice();
    node.put("minutes without a check", advice.without());
    ArrayNode order = node.putArray("order");
    for (Advice.Unit unit : advice.order()) {
      order
          .addObject()
          .put("part", unit.part())
          .put("unit", unit.unit())
          .put("chance", unit.chance())
          .put("minutes", unit.minutes());
    }
    ArrayNode offers = node.putArray("checks");
    List<Advice.Offer> told = checks.told();
    advice.offers().forEach(offer -> offer(offers.addObject(), offer, told.contains(offer)));
    strings(node.putArray("stop"), advice.stop() ? checks.stop() : List.of());
    ArrayNode noHelp = node.putArray("no help");
    for (Advice.NoHelp none : advice.noHelp()) {
      noHelp
          .addObject()
          .put("where", none.power())
          .put("read", none.instrument().name())
          .put("shows", none.value());
    }
    strings(node.putArray("no help says"), checks.noHelp());
    ArrayNode refused = node.putArray("not asked for");
    advice
        .refused()
        .forEach(no -> refused.addObject().put("where", no.scene()).put("why", no.why()));
  }

  /** Where a run reads what, in the words of a readings file: so its reading can be entered. */
  private void reads(ObjectNode node, Check.Run run) {
    node.put("what", run.instrument().name()).put("at", run.scene().power());
    SceneHead head = SceneHead.of(found.system(), run.scene());
    if (!head.lineUp().isEmpty()) {
      node.put("line-up", head.lineUp());
    }
    if (!head.set().isEmpty()) {
      ArrayNode set = node.putArray("set");
      head.set().forEach((name, position) -> set.add(name + ": " + position));
    }
  }

  private void offer(ObjectNode node, Advice.Offer offer, boolean told) {
    node.put("says", CheckWords.words(offer.check(), found));
    node.put("minutes", offer.minutes());
    node.put("minutes to a finished repair", offer.finish());
    node.put("worth", offer.bits());
    node.put("tells more", told);
    node.put("finish", FindWords.finish(offer.finish(), found.advice().without()));
    if (offer.check() instanceof Check.Run run) {
      strings(node.putArray("shows"), checks.bands(run.instrument(), offer));
      reads(node.putObject("reads"), run);
    }
    offer.hangsOn().ifPresent(what -> node.put("holds only if", CheckWords.hangsOn(what)));
    ArrayNode cautions = node.putArray("cautions");
    offer.check().access().stream()
        .sorted()
        .map(Access::caution)
        .filter(caution -> !caution.isEmpty())
        .forEach(cautions::add);
    ArrayNode expects = node.putArray("expects");
    if (offer.check() instanceof Check.Run) {
      for (Advice.Expect expect : offer.expects()) {
        ObjectNode each = expects.addObject();
        ArrayNode causes = each.putArray("causes");
        expect.causes().forEach(causes::add);
        each.put("low", expect.low()).put("high", expect.high());
      }
    }
  }
}
