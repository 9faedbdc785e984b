package org.comparanda.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings one name in, or corrects what is said of it. */
@Command(
    name = "put",
    description = {
      "Bring one name in, or correct what is said of it. What is not said stays as it is; a new",
      "name needs --under."
    },
    mixinStandardHelpOptions = true)
final class TaxaPut implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "NAME", description = "Scientific name without authority.")
  private String name = "";

  @Option(names = "--under", paramLabel = "PARENT", description = "What it stands under.")
  private @Nullable String parent;

  @Option(
      names = "--authority",
      paramLabel = "TEXT",
      description = "For example \"Linnaeus, 1758\".")
  private @Nullable String authority;

  @Option(names = "--rank", paramLabel = "RANK", description = "species, genus, family, …")
  private @Nullable String rank;

  @Option(names = "--plain-name", paramLabel = "TEXT", description = "Its name in plain words.")
  private @Nullable String plainName;

  @Mixin private ChangeArguments change = new ChangeArguments();

  TaxaPut(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (name.isBlank()) {
      throw new CannotDo("Give the name. Nothing was stored.");
    }
    TaxonName taxon = new TaxonName(name.strip());
    ReferenceTables shipped = ReferenceTables.shipped();
    try (Collection opened = change.open(terminal)) {
      TaxonTree tree = HouseTables.tree(opened, shipped);
      tree.standsUnder(taxon)
          .ifPresent(
              now -> {
                throw new CannotDo(now + " Nothing was stored. Put the name that it has now.");
              });
      HouseTaxon row = said(tree, taxon);
      ChangeArguments.done(opened.names().add(List.of(row), shipped.taxa(), change.note()));
      terminal.say(
          taxon
              + (tree.taxon(taxon).isPresent() ? " was corrected." : " was brought in.")
              + " Look at it with taxa list.");
    }
    return Terminal.FINE;
  }

  private HouseTaxon said(TaxonTree tree, TaxonName taxon) {
    Optional<HouseTaxon> before = tree.taxon(taxon).map(HouseTaxon::of);
    if (before.isEmpty() && parent == null) {
      throw new CannotDo(
          "\"" + taxon + "\" is new. Nothing was stored. Say by --under what it stands under.");
    }
    HouseTaxon row =
        before.orElseGet(() -> HouseTaxon.blank(taxon, "said by " + change.note().who().value()));
    return new HouseTaxon(
        taxon,
        Optional.ofNullable(authority).orElse(row.author()).strip(),
        Optional.ofNullable(rank).orElse(row.rank()).strip(),
        Optional.ofNullable(parent).map(text -> known(tree, text)).or(row::parent),
        Optional.empty(),
        Optional.ofNullable(plainName).orElse(row.commonName()).strip(),
        row.source());
  }

  private static TaxonName known(TaxonTree tree, String text) {
    return Optional.of(text.strip())
        .filter(parent -> !parent.isEmpty())
        .map(TaxonName::new)
        .filter(parent -> tree.taxon(parent).isPresent())
        .map(tree::accepted)
        .orElseThrow(
            () ->
                new CannotDo(
                    "\""
                        + text
                        + "\" after --under is no name of this house. Nothing was stored. Look at"
                        + " taxa list, or bring it in first."));
  }
}
