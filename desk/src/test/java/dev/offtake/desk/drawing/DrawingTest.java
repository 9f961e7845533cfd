package dev.offtake.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.system.BleedSystem;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class DrawingTest {
  static Stream<Path> files() {
    return Systems.files().stream();
  }

  private static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static List<Element> all(Document document) {
    List<Element> elements = new ArrayList<>();
    NodeList nodes = document.getElementsByTagName("*");
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyPointAndPartIsThereAndCanBePressed(Path file) throws Exception {
    BleedSystem system = Systems.of(file);
    List<Element> elements = all(parse(Drawing.of(system).svg()));
    Set<String> ids = new HashSet<>();
    for (Element element : elements) {
      if (element.getAttribute("role").equals("button")) {
        assertThat(ids.add(element.getAttribute("id"))).isTrue();
        assertThat(element.getAttribute("aria-label")).isNotBlank();
        assertThat(element.getAttribute("tabindex")).isEqualTo("-1");
      }
    }
    for (int i = 0; i < system.network().points().size(); i++) {
      assertThat(ids).contains(Places.point(i));
    }
    for (int i = 0; i < system.parts().size(); i++) {
      assertThat(ids).as(system.parts().get(i).name()).contains(Places.part(i, 0));
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void nothingThatAStrictPolicyRefuses(Path file) throws Exception {
    for (Element element : all(parse(Drawing.of(Systems.of(file)).svg()))) {
      assertThat(element.hasAttribute("style")).isFalse();
      assertThat(element.getTagName()).isNotIn("style", "script", "foreignObject", "image");
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void eachEndOfALegIsOnePieceThatLeadsToIt(Path file) {
    BleedSystem system = Systems.of(file);
    JsonNode pieces = Drawing.of(system).index().get("pieces");
    Set<String> joined = new HashSet<>();
    for (JsonNode piece : pieces) {
      for (JsonNode leg : piece.get("legs")) {
        joined.add(piece.get("point") + " " + leg.get(0) + " " + leg.get(1) + " " + leg.get(2));
      }
    }
    assertThat(joined).isEqualTo(ends(system));
  }

  /** Ends of all legs: point, part, leg, and whether the leg leaves the point. */
  private static Set<String> ends(BleedSystem system) {
    Set<String> ends = new HashSet<>();
    Zones zones = Zones.of(system);
    for (int i = 0; i < system.parts().size(); i++) {
      Part part = system.parts().get(i);
      for (int k = 0; k < part.legs().size(); k++) {
        Leg leg = part.legs().get(k);
        int from = zones.names().contains(leg.from()) ? -1 : system.network().point(leg.from());
        int to = zones.names().contains(leg.to()) ? -1 : system.network().point(leg.to());
        if (from >= 0) {
          ends.add(from + " " + i + " " + k + " 1");
        }
        if (to >= 0) {
          ends.add(to + " " + i + " " + k + " -1");
        }
      }
    }
    return ends;
  }

  @Test
  void theSameSystemGivesTheSameDrawing() {
    assertThat(Drawing.of(Systems.demo()).svg()).isEqualTo(Drawing.of(Systems.demo()).svg());
  }

  @Test
  void anotherNumberMovesNothing() throws Exception {
    String text = Systems.demoText();
    String other = text.replace("42 psig +4 -2", "51 psig +4 -2").replace("3.4 in", "2.9 in");
    assertThat(other).isNotEqualTo(text);
    Drawing drawing = Drawing.of(Systems.of(other));
    assertThat(drawing.svg()).isEqualTo(Drawing.of(Systems.demo()).svg());
    assertThat(drawing.index()).isEqualTo(Drawing.of(Systems.demo()).index());
  }

  @Test
  void hostileNamesStayText() throws Exception {
    String text =
        Systems.demoText()
            .replace("title: Demo twin", "title: \"'><script>alert(1)</script>\"")
            .replace("mid check valve", "<img src=x onerror=alert(1)> & valve");
    BleedSystem system = Systems.of(text);
    Document document = parse(Drawing.of(system).svg());
    assertThat(all(document)).noneMatch(e -> e.getTagName().matches("script|img"));
    assertThat(all(document)).noneMatch(e -> e.hasAttribute("onerror"));
    assertThat(all(document).stream().map(e -> e.getAttribute("data-name")))
        .contains("left <img src=x onerror=alert(1)> & valve");
  }
}
