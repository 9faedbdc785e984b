package org.comparanda.gui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RememberedLookTest {
  @TempDir private Path folder;

  @Test
  void theLookComesBackAtTheNextStart() {
    Look first = new Look();
    new RememberedLook(folder).follow(first);
    first.themeProperty().set(Theme.DARK);
    first.enlarge(50);
    first.motionProperty().set(false);
    Look next = new Look();
    new RememberedLook(folder).follow(next);
    assertEquals(Theme.DARK, next.themeProperty().get());
    assertEquals(150, next.textPercentProperty().get());
    assertFalse(next.motionProperty().get());
  }

  @Test
  void aFileThatSaysNonsenseChangesNothing() throws IOException {
    Files.writeString(folder.resolve("look.properties"), "theme=PINK\ntext=9000\nmotion=maybe\n");
    Look look = new Look();
    new RememberedLook(folder).follow(look);
    assertEquals(Theme.LIGHT, look.themeProperty().get());
    assertEquals(100, look.textPercentProperty().get());
  }
}
