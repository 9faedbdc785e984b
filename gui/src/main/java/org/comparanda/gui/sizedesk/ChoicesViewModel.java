package org.comparanda.gui.sizedesk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/** How the lines are fitted and told, as chosen. */
public final class ChoicesViewModel {
  private final SizeDeskViewModel desk;
  private final Words words;
  private final Executor work;
  private final Executor ui;
  private final StringProperty problem = new SimpleStringProperty("");

  ChoicesViewModel(SizeDeskViewModel desk, Words words, Executor work, Executor ui) {
    this.desk = desk;
    this.words = words;
    this.work = work;
    this.ui = ui;
  }

  /** Puts a second line beside the first. */
  public void compareWith(Beside beside) {
    choose(c -> c.withBeside(beside));
  }

  /** Fits by another method. */
  public void fitBy(LineMethod method) {
    choose(c -> c.withMethod(method));
  }

  /** Fits on another scale. */
  public void fitOn(LineScale scale) {
    choose(c -> c.withScale(scale));
  }

  /** Corrects the estimate by another factor. */
  public void correctBy(Correction correction) {
    choose(c -> c.withCorrection(correction));
  }

  /** Uses other body masses. */
  public void weigh(LineChoice.Masses masses) {
    choose(c -> c.withMasses(masses));
  }

  /** Says what the bone is, for a line on a tree. */
  public void sayTaxon(Optional<TaxonName> taxon) {
    choose(c -> c.withBoneTaxon(taxon));
  }

  /** Takes the level of the intervals, in per cent as typed. */
  public void atLevel(String typed) {
    problem.set("");
    LevelText.read(typed, words)
        .fold(
            level -> {
              choose(c -> c.withLevel(level));
              return level;
            },
            none -> {
              problem.set(words.said(none.reason() + " " + none.remedy()));
              return 0.0;
            });
  }

  /** Reads a tree and lets the line stand on it. */
  public void climb(Path newick) {
    problem.set("");
    work.execute(
        () -> {
          Outcome<TreeFile> read = TreeFile.read(newick, words);
          ui.execute(
              () -> {
                read.value().ifPresent(t -> choose(c -> c.withTree(t).withMethod(LineMethod.PGLS)));
                problem.set(
                    read.fold(t -> "", none -> words.said(none.reason() + " " + none.remedy())));
              });
        });
  }

  /** What is wrong with a level or a tree; empty when nothing is. */
  public ReadOnlyStringProperty problemProperty() {
    return problem;
  }

  private void choose(UnaryOperator<LineChoice> how) {
    desk.change(a -> a.withChoice(how.apply(a.choice())));
  }
}
