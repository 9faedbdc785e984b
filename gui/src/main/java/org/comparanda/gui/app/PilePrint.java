package org.comparanda.gui.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.comparanda.gui.pile.PileRoom;
import org.comparanda.measurement.Person;
import org.comparanda.pile.PileEntry;
import org.comparanda.slips.SlipFacts;
import org.comparanda.slips.Slips;

/** Prints the pile with the Day Book's head on every page. */
record PilePrint(Workplace place) implements PileRoom.Printing {
  @Override
  public void to(Path file, List<PileEntry> entries) throws IOException {
    boolean simulated =
        place.collection().animals().shelf().animals().stream()
            .anyMatch(a -> a.remarks().contains("simulated"));
    SlipFacts facts =
        new SlipFacts(
            place.look().paperProperty().get(),
            String.valueOf(place.collection().file().getFileName()),
            "Comparanda",
            place.clock().instant(),
            place.collection().dayBookHead(),
            simulated ? SlipFacts.DataKind.SIMULATED : SlipFacts.DataKind.RECORDED,
            place.printed(),
            id ->
                place
                    .collection()
                    .people()
                    .person(id)
                    .map(Person::name)
                    .filter(name -> !name.isBlank())
                    .orElse(id.value()));
    Path unfinished =
        Files.createTempFile(file.toAbsolutePath().resolveSibling(""), "unfinished", ".part");
    try {
      try (OutputStream out = Files.newOutputStream(unfinished)) {
        new Slips(facts).pile(out, entries);
      }
      Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }
}
