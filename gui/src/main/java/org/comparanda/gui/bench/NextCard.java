package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.comparanda.gui.capture.Styled;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.HonestDigits;
import org.comparanda.suggestion.NextMeasurement;

/** What to measure next, and how large the animal was, in one line each. */
final class NextCard extends VBox {
  private final Words words;
  private final Numbers numbers;
  private final Label next = wrapped("helpful");
  private final Sentence sizeTitle = new Sentence("strong");
  private final Label size = wrapped("size");
  private final Label basis = wrapped("note");

  NextCard(BenchViewModel bench, Words words, Numbers numbers) {
    this.words = words;
    this.numbers = numbers;
    getStyleClass().addAll("card", "next-card");
    next.setId("next");
    size.setId("size");
    getChildren().addAll(next, sizeTitle, size, basis);
    bench.findingProperty().addListener((o, was, is) -> show(is));
    show(Optional.empty());
  }

  private void show(Optional<Finding> finding) {
    List<NextMeasurement> worth = finding.map(f -> f.suggestion().next()).orElse(List.of());
    next.setText(
        worth.isEmpty()
            ? words.get("next.none")
            : words.get("next", worth.get(0).measurement().value(), worth.get(0).sentence()));
    Styled.as(next, "label", worth.isEmpty() ? "grey" : "helpful");
    Optional<Advice.Size> found = finding.flatMap(Finding::size);
    sizeTitle.show(
        found.map(s -> words.get("size.if", s.taxon().value())).orElse(words.get("size.title")),
        found.map(s -> List.of(s.taxon().value())).orElse(List.of()));
    size.setText(
        found.map(this::said).orElse(words.get(finding.isPresent() ? "size.nofit" : "size.none")));
    Styled.as(size, "label", found.isPresent() ? "reading" : "grey");
    basis.setText(found.map(this::under).orElse(""));
    basis.setManaged(found.isPresent());
  }

  private String said(Advice.Size s) {
    boolean kilograms = s.estimate().estimate() >= 1000;
    double unit = kilograms ? 1000 : 1;
    double low = s.lowG() / unit;
    double high = s.highG() / unit;
    HonestDigits digits = HonestDigits.of(low, high);
    return words.get(
        "size",
        numbers.written(digits.text(s.estimate().estimate() / unit)),
        kilograms ? "kg" : "g",
        numbers.written(digits.text(low)),
        numbers.written(digits.text(high)));
  }

  private String under(Advice.Size s) {
    return s.estimate()
        .outsideRange()
        .map(out -> words.get("size.outside", level(s), s.animals(), words.said(out.sentence())))
        .orElse(words.get("size.within", level(s), s.animals()));
  }

  private String level(Advice.Size s) {
    return numbers.fixed(100 * s.interval().level(), 0);
  }

  private static Label wrapped(String style) {
    Label label = new Label();
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }
}
