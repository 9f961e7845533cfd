package dev.offtake.explain;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.cause.Reading;
import dev.offtake.cause.find.Match;
import dev.offtake.cause.find.MatchedCourse;
import dev.offtake.cause.find.MatchedNumber;
import dev.offtake.cause.find.MatchedPace;
import dev.offtake.quantity.Stated;
import java.util.List;

/** What a healthy run tells as JSON, its layout numbered by {@code offtake match}. */
public final class MatchJson {
  /** Number of the layout; raised when a field changes its meaning or goes. */
  public static final int LAYOUT = 1;

  private MatchJson() {}

  /**
   * Makes the document; numbers in SI.
   *
   * @param match what was told
   * @param notes what else has to be said with care, whole sentences
   */
  public static String print(Match match, List<String> notes) {
    ObjectNode root = new ObjectMapper().createObjectNode();
    root.put("offtake match", LAYOUT);
    root.put("title", match.system().title());
    root.put("healthy", match.healthy());
    root.put("settled", match.settled());
    root.put("fit", match.fit());
    ArrayNode numbers = root.putArray("numbers");
    match.numbers().forEach(number -> number(numbers.addObject(), number));
    ArrayNode together = root.putArray("only together");
    for (Match.Together pair : match.together()) {
      ObjectNode node = together.addObject();
      node.put("one", MatchWords.name(match.numbers().get(pair.one())));
      node.put("other", MatchWords.name(match.numbers().get(pair.other())));
      node.put("tells", pair.sum() ? "sum" : "difference").put("told", pair.told());
    }
    ArrayNode paces = root.putArray("valves");
    match.paces().forEach(pace -> pace(paces.addObject(), pace));
    ArrayNode courses = root.putArray("recorded");
    match.courses().forEach(course -> course(courses.addObject(), course));
    ArrayNode left = root.putArray("left");
    match.left().forEach(each -> left(left.addObject(), each));
    error(root.putObject("pressure error"), match.pressure());
    error(root.putObject("temperature error"), match.temperature());
    ArrayNode ignored = root.putArray("not used");
    match.ignored().forEach(reading -> reading(ignored.addObject(), reading));
    ArrayNode otherwise = root.putArray("lights that do not fit");
    match.otherwise().forEach(reading -> reading(otherwise.addObject(), reading));
    ArrayNode said = root.putArray("notes");
    notes.forEach(said::add);
    root.put("caution", StateAnswer.CAUTION);
    return root.toPrettyString();
  }

  private static void number(ObjectNode node, MatchedNumber number) {
    Stated before = number.statement().stated();
    node.put("part", number.number().part());
    node.put("line", number.statement().key());
    node.put("dimension", before.dimension().words());
    node.put("before", before.nominal());
    node.put("before low", before.low());
    node.put("before high", before.high());
    node.put("before words", before.text());
    node.put("after", number.value());
    node.put("deviation", number.deviation());
    node.put("told", number.told());
    node.put("verdict", MatchWords.told(number.verdict()));
    node.put("beyond its band", number.beyond());
    node.put("outside its band", number.faulty());
  }

  private static void pace(ObjectNode node, MatchedPace pace) {
    node.put("part", pace.part()).put("line", pace.line().words());
    node.put("before", pace.before()).put("after", pace.value());
    node.put("low", pace.low()).put("high", pace.high());
    node.put("told", pace.told()).put("verdict", MatchWords.told(pace.verdict()));
  }

  private static void course(ObjectNode node, MatchedCourse course) {
    node.put("file", course.recording().file()).put("profile", course.recording().run());
    node.put("what", course.channel().about().name()).put("before", course.before());
    node.put("after", course.after()).put("most", course.most()).put("at", course.at());
  }

  private static void left(ObjectNode node, Match.Left left) {
    node.put("at", left.scene().name());
    node.put("what", left.reading().about().name());
    node.put("read", left.read());
    node.put("file", left.before());
    node.put("matched", left.after());
    node.put("off by", left.errors());
    node.put("off the others by", left.score());
    node.put("fits", left.fits());
  }

  private static void error(ObjectNode node, Match.ErrorLeft error) {
    node.put("before", error.before());
    node.put("after", error.after());
    node.put("told", error.told());
    node.put("readings", error.readings());
    node.put("degrees of freedom", error.freedom());
  }

  private static void reading(ObjectNode node, Reading reading) {
    node.put("what", reading.about().name());
    node.put("read", reading.value().words());
  }
}
