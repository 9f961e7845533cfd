package dev.offtake.measure.cases;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import org.junit.jupiter.api.Test;

/** Who makes the cases knows nothing of who is judged by them. */
class IndependenceTest {
  private static final JavaClasses CASES =
      new ClassFileImporter()
          .withImportOption(new DoNotIncludeTests())
          .importPackages("dev.offtake.measure.cases");

  @Test
  void importsNothingOfOfftake() {
    classes()
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("dev.offtake.measure.cases", "java..", "org.jspecify..")
        .check(CASES);
  }

  @Test
  void hasNoClockAndOnlyChanceThatIsGiven() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .haveNameMatching("java\\.time\\..*|java\\.util\\.Random|java\\..*ThreadLocalRandom")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(Math.class, "random")
        .check(CASES);
  }
}
