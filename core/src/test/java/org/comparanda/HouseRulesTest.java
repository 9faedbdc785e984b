package org.comparanda;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows of the house and who may use which library. See docs/architecture.md. */
@AnalyzeClasses(packages = "org.comparanda", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseRulesTest {
  @ArchTest
  static final ArchRule statisticsKnowsNoBone =
      noClasses()
          .that()
          .resideInAPackage("org.comparanda.statistics..")
          .should()
          .dependOnClassesThat(
              com.tngtech.archunit.base.DescribedPredicate.describe(
                  "are ours outside statistics",
                  c ->
                      c.getPackageName().startsWith("org.comparanda.")
                          && !c.getPackageName().startsWith("org.comparanda.statistics")))
          .because("statistics takes numbers and gives records, so that anyone can check it alone");

  @ArchTest
  static final ArchRule noCycles =
      slices()
          .matching("org.comparanda.(*)..")
          .should()
          .beFreeOfCycles()
          .because("a ring of packages can only be understood whole");

  @ArchTest
  static final ArchRule coreHasNoWindow =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..")
          .because("the whole analysis runs in a batch and in a test");

  @ArchTest
  static final ArchRule suggestionAndSizeStayApart =
      noClasses()
          .that()
          .resideInAPackage("org.comparanda.suggestion..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.comparanda.sizeestimate..")
          .because("which kind and how large are two questions; weights pass as plain numbers");

  @ArchTest
  static final ArchRule sizeDoesNotSuggest =
      noClasses()
          .that()
          .resideInAPackage("org.comparanda.sizeestimate..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.comparanda.suggestion..")
          .because("which kind and how large are two questions; weights pass as plain numbers");

  @ArchTest
  static final ArchRule mathematicsInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.comparanda.statistics..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.commons.math3..", "org.ejml..", "smile..")
          .because("a library of numbers can be swapped without touching the rest");

  @ArchTest
  static final ArchRule databaseInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.comparanda.storage..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.jdbi..", "org.flywaydb..", "java.sql..", "org.sqlite..")
          .because("PostgreSQL will stand behind the same repositories");

  @ArchTest
  static final ArchRule formatsInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "org.comparanda.exchange..", "org.comparanda.tables..", "org.comparanda.demo..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.fasterxml.jackson..", "de.siegmar.fastcsv..")
          .because("what goes in and out is read and written in one place");

  @ArchTest
  static final ArchRule spreadsheetsInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.comparanda.exchange..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.dhatim..")
          .because("a spreadsheet is only another way of writing a table");

  @ArchTest
  static final ArchRule paperInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.comparanda.slips..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..", "com.google.zxing..")
          .because("what is printed is drawn in one place");

  @ArchTest
  static final ArchRule commandLineInOnePlace =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.comparanda.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..")
          .because("the library has no command line");

  @ArchTest
  static final ArchRule noStaticState =
      fields()
          .that()
          .areStatic()
          .should()
          .beFinal()
          .because("static state makes tests meet each other");

  @ArchTest
  static final ArchRule clockAndExitArePassedIn =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.comparanda.cli..")
          .should()
          .callMethod(java.time.Instant.class, "now")
          .orShould()
          .callMethod(System.class, "exit", int.class)
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
}
