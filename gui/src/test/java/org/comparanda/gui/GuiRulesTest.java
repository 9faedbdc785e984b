package org.comparanda.gui;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows inside the desktop program. See docs/architecture.md. */
@AnalyzeClasses(
    packages = "org.comparanda.gui",
    importOptions = ImportOption.DoNotIncludeTests.class)
class GuiRulesTest {

  @ArchTest
  static final ArchRule screensDoNotImportEachOther =
      slices()
          .matching("org.comparanda.gui.(*)..")
          .should()
          .notDependOnEachOther()
          .ignoreDependency(
              describe("the wiring", (JavaClass c) -> in(c, "org.comparanda.gui.app")),
              describe("anything", (JavaClass c) -> true))
          .ignoreDependency(
              describe("anything", (JavaClass c) -> true),
              describe(
                  "controls, words, measuring, calls by eye, hearing a caliper and showing pictures",
                  (JavaClass c) ->
                      in(c, "org.comparanda.gui.control")
                          || in(c, "org.comparanda.gui.text")
                          || in(c, "org.comparanda.gui.calling")
                          || in(c, "org.comparanda.gui.capture")
                          || in(c, "org.comparanda.gui.caliper")
                          || in(c, "org.comparanda.gui.photos")))
          .because("a screen can be read, changed and left out alone");

  @ArchTest
  static final ArchRule nobodyImportsTheWiring =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.comparanda.gui.app..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.comparanda.gui.app..")
          .because("a screen is handed what it needs by its constructor");

  @ArchTest
  static final ArchRule viewModelsRunWithoutAWindow =
      noClasses()
          .that()
          .haveSimpleNameEndingWith("ViewModel")
          .should()
          .dependOnClassesThat(
              describe(
                  "are JavaFX beyond beans and collections",
                  c ->
                      c.getPackageName().startsWith("javafx.")
                          && !c.getPackageName().startsWith("javafx.beans")
                          && !c.getPackageName().startsWith("javafx.collections")))
          .because("what a screen does is tested on the test's own thread");

  @ArchTest
  static final ArchRule storageIsOpenedByTheWiring =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.comparanda.gui.app..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.comparanda.storage..")
          .because("screens speak to repositories, whatever stands behind them");

  @ArchTest
  static final ArchRule noCommandLine =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.comparanda.cli..", "picocli..")
          .because("the window and the command line are two doors of one house");

  @ArchTest
  static final ArchRule controlsKnowNoDomain =
      classes()
          .that()
          .resideInAPackage("org.comparanda.gui.control..")
          .should()
          .onlyDependOnClassesThat(
              describe(
                  "are not of core or of a screen",
                  c ->
                      !c.getPackageName().startsWith("org.comparanda.")
                          || in(c, "org.comparanda.gui.control")
                          || in(c, "org.comparanda.gui.text")))
          .because("a control draws plain records");

  @ArchTest
  static final ArchRule tabLeavesEveryBox =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName("org.comparanda.gui.control.Prose")
          .should()
          .callConstructorWhere(
              describe(
                  "makes a text area of JavaFX",
                  call ->
                      call.getTargetOwner().isEquivalentTo(javafx.scene.control.TextArea.class)))
          .because("Tab would write a character in it, and a person without a mouse be caught");

  @ArchTest
  static final ArchRule noStaticState =
      fields()
          .that()
          .areStatic()
          .should()
          .beFinal()
          .because("static state makes tests meet each other");

  @ArchTest
  static final ArchRule clockIsPassedIn =
      noClasses()
          .should()
          .callMethod(java.time.Instant.class, "now")
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .callConstructor(java.util.Random.class)
          .because("clock, seed and writer are handed in, so that a run can be repeated");

  @ArchTest
  static final ArchRule namesSayTheIdea =
      noClasses()
          .should()
          .haveNameMatching(
              ".*(Utils?|Helper|Manager|Impl|Common|Misc|Processor)$|.*\\.(Abstract|Base)[A-Z].*")
          .because("a name that says nothing attracts everything");

  private static boolean in(JavaClass c, String name) {
    return c.getPackageName().equals(name) || c.getPackageName().startsWith(name + ".");
  }
}
