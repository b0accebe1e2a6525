package fineweight.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;

/** Workbooks know nothing of coins, libraries stay in their corners, and the command is on top. */
@AnalyzeClasses(
    packages = {
      "fineweight.workbook",
      "fineweight.feed",
      "fineweight.refresh",
      "fineweight.result",
      "fineweight.settings",
      "fineweight.table",
      "fineweight.terminal",
      "fineweight.tool",
      "fineweight.toolpack",
      "fineweight.window"
    },
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  /** A package may use those before it. A new package has to find its place here. */
  private static final List<String> ORDER =
      List.of(
          "workbook",
          "workbook.save",
          "workbook.csv",
          "workbook.xls.formula",
          "workbook.xls",
          "workbook.open",
          "workbook.xlsx.xml",
          "workbook.xlsx.zip",
          "workbook.xlsx.part",
          "workbook.xlsx.style",
          "workbook.xlsx.sheet",
          "workbook.xlsx.formula",
          "workbook.xlsx.splice",
          "workbook.xlsx.chart",
          "workbook.xlsx.draft",
          "workbook.xlsx",
          "toolpack",
          "refresh.inventory",
          "refresh.own",
          "refresh.worth",
          "refresh.column",
          "refresh.collection",
          "refresh.sheet",
          "refresh",
          "result",
          "terminal",
          "giveaway",
          "settings",
          "feed",
          "entry",
          "table",
          "window",
          "tool");

  @ArchTest
  static final ArchRule PACKAGES_USE_ONLY_WHAT_STANDS_BEFORE_THEM =
      classes().should(onlyUseEarlierPackages());

  @ArchTest
  static final ArchRule PACKAGES_HAVE_NO_CYCLES =
      slices().matching("fineweight.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule WORKBOOKS_KNOW_NOTHING_OF_COINS =
      noClasses()
          .that()
          .resideInAPackage("fineweight.workbook..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "fineweight.quantity..",
              "fineweight.metal..",
              "fineweight.standard..",
              "fineweight.spot..",
              "fineweight.clue..",
              "fineweight.identification..",
              "fineweight.column..",
              "org.joda.money..");

  @ArchTest
  static final ArchRule REFRESHING_KNOWS_WORKBOOKS_ONLY_BY_THEIR_INTERFACE =
      noClasses()
          .that()
          .resideInAPackage("fineweight.refresh..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("fineweight.workbook.*..", "java.util.zip..", "java.nio.channels..");

  @ArchTest
  static final ArchRule POI_STAYS_IN_ITS_CORNER =
      classes()
          .that(usePackage("org.apache.poi"))
          .should()
          .resideInAnyPackage("fineweight.workbook.xls..", "fineweight.toolpack..")
          .orShould()
          .haveSimpleName("Probe")
          .orShould()
          .haveSimpleName("EncryptedFile")
          .because(
              "only the old format and the functions need it; the probe and encrypted files are"
                  + " containers");

  @ArchTest
  static final ArchRule JACKSON_STAYS_IN_ITS_CORNER =
      classes()
          .that(usePackage("com.fasterxml.jackson"))
          .should()
          .resideInAnyPackage("fineweight.settings", "fineweight.feed", "fineweight.result");

  @ArchTest
  static final ArchRule OPTIONS_STAY_IN_THE_COMMAND =
      classes().that(usePackage("picocli")).should().resideInAPackage("fineweight.tool");

  @ArchTest
  static final ArchRule PROGRESS_STAYS_AT_THE_TERMINAL =
      classes()
          .that(usePackage("me.tongfei"))
          .should()
          .resideInAPackage("fineweight.terminal")
          .because("nothing below the command knows of terminals");

  @ArchTest
  static final ArchRule ONE_PACKAGE_OPENS_CONNECTIONS =
      noClasses()
          .that()
          .resideOutsideOfPackage("fineweight.feed")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.net.http..", "javax.net..")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching(
              "java\\.net\\.(.*Socket.*|.*Connection|URL|InetAddress)"
                  + "|java\\.nio\\.channels\\..*Socket.*|java\\.nio\\.channels\\.Datagram.*")
          .because("whoever wants no connection must be able to see where they are made");

  @ArchTest
  static final ArchRule WINDOWS_STAY_IN_THEIR_CORNER =
      classes()
          .that(usePackage("javax.swing").or(usePackage("java.awt")).or(usePackage("com.formdev")))
          .should()
          .resideInAPackage("fineweight.window");

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
          .orShould()
          .beDeclaredInClassesThat()
          .resideInAnyPackage("fineweight.workbook.xls..", "fineweight.toolpack..")
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

  @ArchTest
  static void theProgramEndsInOnePlace(JavaClasses all) {
    List<String> exits =
        all.stream()
            .flatMap(each -> each.getMethodCallsFromSelf().stream())
            .filter(call -> call.getTargetOwner().isEquivalentTo(System.class))
            .filter(call -> call.getName().equals("exit"))
            .map(call -> call.getOriginOwner().getName())
            .toList();
    assertThat(exits).containsExactly("fineweight.tool.Main");
  }

  private static com.tngtech.archunit.base.DescribedPredicate<JavaClass> usePackage(String name) {
    return describe(
        "use " + name,
        each ->
            each.getDirectDependenciesFromSelf().stream()
                .anyMatch(used -> used.getTargetClass().getPackageName().startsWith(name)));
  }

  private static ArchCondition<JavaClass> onlyUseEarlierPackages() {
    return new ArchCondition<>("only use packages before their own") {
      @Override
      public void check(JavaClass origin, ConditionEvents events) {
        int own = place(origin);
        if (own < 0) {
          events.add(SimpleConditionEvent.violated(origin, origin.getName() + " has no place"));
          return;
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
