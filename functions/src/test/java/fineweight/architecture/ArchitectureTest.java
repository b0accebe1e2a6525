package fineweight.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;

/** The functions know nothing of files, hosts and clocks, and their packages stand in one order. */
@AnalyzeClasses(packages = "fineweight", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  /** A package may use those before it. A new package has to find its place here. */
  private static final List<String> ORDER =
      List.of(
          "quantity",
          "metal",
          "money",
          "grade",
          "spot",
          "standard",
          "valuation",
          "price",
          "lot",
          "sale",
          "typeset",
          "clue.word",
          "clue.lexicon",
          "clue",
          "clue.passage",
          "clue.reading.date",
          "clue.reading",
          "identification.candidate",
          "identification.weighing",
          "identification",
          "column",
          "sheet.function",
          "sheet.coin",
          "sheet.measure",
          "sheet.worth",
          "sheet.sale",
          "sheet");

  @ArchTest
  static final ArchRule PACKAGES_USE_ONLY_WHAT_STANDS_BEFORE_THEM =
      classes().should(onlyUseEarlierPackages());

  @ArchTest
  static final ArchRule PACKAGES_HAVE_NO_CYCLES =
      slices().matching("fineweight.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule NO_FILES_AND_NO_HOSTS =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.nio.file..", "org.apache.poi..", "com.fasterxml..", "picocli..", "com.sun..")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.io.File");

  @ArchTest
  static final ArchRule NO_PRINTING =
      noClasses()
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  @ArchTest
  static final ArchRule NO_CLOCK =
      noClasses()
          .should()
          .callMethodWhere(
              describe(
                  "asks the clock",
                  (JavaMethodCall call) ->
                      call.getTargetOwner().getPackageName().startsWith("java.time")
                              && call.getName().equals("now")
                          || call.getTargetOwner().isEquivalentTo(System.class)
                              && call.getName().matches("currentTimeMillis|nanoTime|exit")));

  @ArchTest
  static final ArchRule NO_FLOATING_POINT =
      fields()
          .that(
              describe(
                  "hold floating point",
                  (JavaField field) ->
                      Set.of("double", "float", "java.lang.Double", "java.lang.Float")
                          .contains(field.getRawType().getName())))
          .should()
          .haveName("width")
          .because("mass and money are exact; the width of a column is neither");

  @ArchTest
  static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS =
      noClasses()
          .should()
          .haveNameMatching(".*(Manager|Helper|Utils?|Impl|Processor|Data|Info)(\\$.*)?");

  @ArchTest
  static final ArchRule MONEY_IS_NOT_COMPARED_BY_SCALE =
      noClasses()
          .should()
          .callMethod("org.joda.money.BigMoney", "equals", Object.class.getName())
          .orShould()
          .callMethod("org.joda.money.Money", "equals", Object.class.getName());

  private static ArchCondition<JavaClass> onlyUseEarlierPackages() {
    return new ArchCondition<>("only use packages before their own") {
      @Override
      public void check(JavaClass origin, ConditionEvents events) {
        int own = place(origin);
        if (own < 0) {
          events.add(SimpleConditionEvent.violated(origin, origin.getName() + " has no place"));
        }
        for (Dependency dependency : origin.getDirectDependenciesFromSelf()) {
          JavaClass target = dependency.getTargetClass();
          if (target.getPackageName().startsWith("fineweight.") && place(target) > own) {
            events.add(SimpleConditionEvent.violated(origin, dependency.getDescription()));
          }
        }
      }
    };
  }

  private static int place(JavaClass each) {
    return ORDER.indexOf(each.getPackageName().substring("fineweight.".length()));
  }
}
