package org.comparanda.cli;

import org.comparanda.sizeestimate.EquationAnswer;
import org.comparanda.sizeestimate.EquationOnShelf;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.statistics.Outcome;

/** A published equation and its values as plain text. */
record EquationText(Terminal terminal) {
  void write(PublishedEquation equation, Outcome<EquationOnShelf> onShelf) {
    terminal.say(equation.name() + " (" + equation.key() + "), for " + equation.appliesTo() + ".");
    terminal.say("  " + equation.citation() + "; numbers: " + equation.howVerified() + ".");
    terminal.say(
        "  "
            + onShelf.<String>fold(
                EquationOnShelf::sentence,
                n -> "Not compared with the shelf. " + n.reason() + " " + n.remedy()));
    terminal.say("");
  }

  void write(String bone, Outcome<EquationAnswer> outcome) {
    terminal.say(
        bone
            + ": "
            + outcome.<String>fold(
                EquationText::value, n -> "not estimable. " + n.reason() + " " + n.remedy()));
    outcome.value().ifPresent(a -> a.warnings().forEach(w -> terminal.say("  Careful: " + w)));
  }

  private static String value(EquationAnswer answer) {
    String unit = " " + answer.equation().resultUnit();
    return Figures.five(answer.value())
        + unit
        + answer
            .prediction()
            .<String>fold(
                p ->
                    ", "
                        + Figures.five(100 * p.level())
                        + " % interval "
                        + Figures.five(p.lower())
                        + " to "
                        + Figures.five(p.upper())
                        + unit,
                n -> "; no interval: " + n.reason());
  }
}
