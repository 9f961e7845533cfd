package dev.offtake;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.conditions.ArchConditions.dependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds the floors of the house: imports only go down, and physics knows no clock and no chance.
 */
class FloorsTest {

  /** From the ground up; rooms on one floor do not know each other. */
  private static final List<List<String>> FLOORS =
      List.of(
          List.of("quantity", "air", "sparse", "severity"),
          List.of("flow", "heat"),
          List.of("logic"),
          List.of("part"),
          List.of("network"),
          List.of("solve"),
          List.of("system"),
          List.of("study", "stability", "sources"),
          List.of("time"),
          List.of("profile"),
          List.of("cause"),
          List.of("explain"));

  private static final String[] PHYSICS =
      rooms(List.of("air", "flow", "heat", "part", "network", "sparse"));

  private static final JavaClasses CORE =
      new ClassFileImporter()
          .withImportOption(new DoNotIncludeTests())
          .importPackages("dev.offtake");

  @TestFactory
  Stream<DynamicTest> importsOnlyGoDown() {
    List<DynamicTest> tests = new ArrayList<>();
    for (int floor = 0; floor < FLOORS.size(); floor++) {
      for (String room : FLOORS.get(floor)) {
        String[] forbidden = rooms(besideAndAbove(floor, room));
        tests.add(dynamicTest(room, () -> assertKnowsNone(room, forbidden)));
      }
    }
    return tests.stream();
  }

  @Test
  void everyRoomHasAFloor() {
    String[] known = rooms(FLOORS.stream().flatMap(List::stream).toList());
    classes().should().resideInAnyPackage(known).check(CORE);
  }

  @Test
  void everyRoomSaysThatItIsNullMarked() {
    List<String> unmarked =
        CORE.getPackage("dev.offtake").getSubpackagesInTree().stream()
            .filter(room -> !room.getClasses().isEmpty())
            .filter(room -> !room.isAnnotatedWith(NullMarked.class))
            .map(JavaPackage::getName)
            .toList();

    assertThat(unmarked).isEmpty();
  }

  @Test
  void noRoomsGoInACircle() {
    slices().matching("dev.offtake.(*)..").should().beFreeOfCycles().check(CORE);
  }

  @Test
  void coreKeepsNoLog() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.util.logging..", "org.slf4j..")
        .orShould(dependOnClassesThat(type(System.Logger.class)))
        .check(CORE);
  }

  @Test
  void physicsHasNoClockAndNoChance() {
    noClasses()
        .that(resideInAnyPackage(PHYSICS))
        .should()
        .dependOnClassesThat()
        .haveNameMatching("java\\.time\\.(Clock|InstantSource)|java\\..*Random(Generator)?")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(Instant.class, "now")
        .check(CORE);
  }

  /**
   * A room that is not built yet breaks nothing; that none is forgotten, everyRoomHasAFloor tells.
   */
  private static void assertKnowsNone(String room, String[] forbidden) {
    if (forbidden.length == 0) {
      return;
    }
    noClasses()
        .that()
        .resideInAPackage("dev.offtake." + room + "..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(forbidden)
        .allowEmptyShould(true)
        .check(CORE);
  }

  private static List<String> besideAndAbove(int floor, String room) {
    return FLOORS.subList(floor, FLOORS.size()).stream()
        .flatMap(List::stream)
        .filter(other -> !other.equals(room))
        .toList();
  }

  private static String[] rooms(List<String> names) {
    return names.stream().map(name -> "dev.offtake." + name + "..").toArray(String[]::new);
  }
}
