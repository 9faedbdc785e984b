package org.comparanda.gui.secondlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.comparanda.gui.secondlook.AgreementShown.KappaLine;
import org.comparanda.gui.secondlook.AgreementShown.PairLine;
import org.comparanda.gui.secondlook.AgreementShown.WhyLine;
import org.comparanda.gui.text.Numbers;
import org.comparanda.secondlook.Agreement;
import org.comparanda.secondlook.Likeness;
import org.comparanda.secondlook.ManyLooks;
import org.comparanda.secondlook.Queued;
import org.comparanda.secondlook.TwoLooks;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.agreement.Kappa;

/** How far people agree, at the rank that calls are counted at. */
public final class AgreementViewModel {
  private static final double LEVEL = 0.95;

  /** What calls are counted as. */
  public enum Rank {
    AS_CALLED,
    GENUS,
    FAMILY,
    ORDER;

    Optional<String> rank() {
      return this == AS_CALLED
          ? Optional.empty()
          : Optional.of(name().toLowerCase(java.util.Locale.ROOT));
    }
  }

  private final SecondLookRoom room;
  private final LookWords said;
  private final ObjectProperty<Rank> rank = new SimpleObjectProperty<>(Rank.AS_CALLED);
  private final ObjectProperty<AgreementShown> shown =
      new SimpleObjectProperty<>(AgreementShown.nothing());

  AgreementViewModel(SecondLookRoom room, LookWords said) {
    this.room = room;
    this.said = said;
  }

  /** What the page shows for these looks. */
  AgreementShown of(List<ManyLooks> groups, Rank counted) {
    List<TwoLooks> looks =
        groups.stream()
            .map(g -> new TwoLooks(g.calls().get(0), g.calls().get(1), g.why()))
            .toList();
    Agreement agreement = new Agreement(looks, room.tree());
    List<TwoLooks> drawn = looks.stream().filter(l -> !l.why().targeted()).toList();
    int agree = count(agreement, drawn, Likeness.Kind.AGREE);
    int atGroup = count(agreement, drawn, Likeness.Kind.AGREE_AT_GROUP);
    Outcome<Kappa> cohen = counted.rank().map(agreement::kappaAt).orElseGet(agreement::kappa);
    return new AgreementShown(
        drawn.isEmpty()
            ? said.get("agreement.none")
            : said.get("agreement.sentence", drawn.size(), agree, atGroup),
        List.of(
            line(said.get("kappa.cohen"), cohen, drawn.isEmpty() ? "nolooks" : "onekind"),
            line(said.get("kappa.fleiss"), ManyLooks.fleiss(groups), "nothree")),
        pairs(agreement.confusions()),
        targeted(agreement, looks),
        pairs(agreement.confusionsOfTargeted()));
  }

  private KappaLine line(String name, Outcome<Kappa> kappa, String otherwise) {
    Numbers numbers = said.numbers();
    return kappa.fold(
        k -> {
          Interval interval = k.interval(LEVEL);
          return new KappaLine(
              name,
              numbers.fixed(k.value(), 2),
              numbers.fixed(interval.lower(), 2),
              numbers.fixed(interval.upper(), 2),
              String.valueOf(k.subjects()),
              "");
        },
        none -> new KappaLine(name, "–", "–", "–", "–", said.get("kappa." + otherwise)));
  }

  private static int count(Agreement agreement, List<TwoLooks> looks, Likeness.Kind kind) {
    return (int) looks.stream().filter(l -> agreement.likeness(l).kind() == kind).count();
  }

  private static List<PairLine> pairs(Map<Agreement.Confusion, Integer> table) {
    List<PairLine> lines = new ArrayList<>();
    table.forEach(
        (pair, bones) -> lines.add(new PairLine(pair.one().value(), pair.other().value(), bones)));
    lines.sort(java.util.Comparator.comparing(PairLine::bones).reversed());
    return lines;
  }

  private List<WhyLine> targeted(Agreement agreement, List<TwoLooks> looks) {
    return Stream.of(Queued.Why.values())
        .filter(Queued.Why::targeted)
        .map(why -> why(agreement, why, looks.stream().filter(l -> l.why() == why).toList()))
        .filter(line -> line.bones() > 0)
        .toList();
  }

  private WhyLine why(Agreement agreement, Queued.Why why, List<TwoLooks> looks) {
    return new WhyLine(
        said.word("why", why),
        looks.size(),
        count(agreement, looks, Likeness.Kind.AGREE),
        count(agreement, looks, Likeness.Kind.AGREE_AT_GROUP),
        count(agreement, looks, Likeness.Kind.DIFFER));
  }

  void take(AgreementShown now) {
    shown.set(now);
  }

  /** What calls are counted as; the screen looks again after it was changed. */
  public ObjectProperty<Rank> rankProperty() {
    return rank;
  }

  public ReadOnlyObjectProperty<AgreementShown> shownProperty() {
    return shown;
  }
}
