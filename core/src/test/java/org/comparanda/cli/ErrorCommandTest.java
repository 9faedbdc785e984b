package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ErrorCommandTest {
  @TempDir Path folder;

  // R 4.2.2 psych 2.2.9: ICC(2,1) 0.28976377952755894 for four judges (expected/g_icc.csv).
  @Test
  void fourJudgesAgreeAsInAnotherProgram() throws IOException {
    Path table = OutsideFile.copied(folder, "shrout_fleiss1979.csv");
    Path out = folder.resolve("error.json");
    Typed typed =
        Typed.command("error", table, "--only", "j1,j2,j3,j4", "--persons", "--json", out);
    assertEquals(0, typed.code(), typed.err());
    JsonNode json = new ObjectMapper().readTree(out.toFile());
    assertEquals(6, json.get("n").asInt());
    assertEquals(0.28976377952755894, json.get("icc").asDouble(), 1e-10);
    assertTrue(json.get("bias").has("notEstimable"), json.toString());
  }

  // R 4.2.2: TEM 15.306669057866863 (expected/g_tem_limits.csv), rounded to five digits here.
  @Test
  void twoTakesAreTold() {
    Path table = OutsideFile.copied(folder, "bland_altman1986.csv");
    Typed typed = Typed.command("error", table, "--only", "wright_1,wright_2");
    assertEquals(0, typed.code(), typed.err());
    assertTrue(typed.out().contains("technical error of measurement 15.307"), typed.out());
  }

  @Test
  void tableOfOneColumnIsRefused() throws IOException {
    Path table = Files.writeString(folder.resolve("one.csv"), "bone,GL\na,10\nb,11\n");
    Typed typed = Typed.command("error", table);
    assertEquals(2, typed.code());
    assertTrue(typed.err().contains("two readings"), typed.err());
  }
}
