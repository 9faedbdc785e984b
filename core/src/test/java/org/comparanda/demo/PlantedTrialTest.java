package org.comparanda.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlantedTrialTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();

  // The figures asked for: 95 in 100 of 60 faults; one false finding in 200 clean cells.
  @ParameterizedTest
  @ValueSource(longs = {7, 1, 20417})
  void nearlyAllPlantedFaultsAreFoundAndHardlyASoundCellIsNamed(long seed) {
    PlantedTrial trial = PlantedTrial.of(TABLES, seed);
    assertEquals(60, trial.planted().size());
    assertTrue(trial.cleanCells() > 2000, () -> "clean cells " + trial.cleanCells());
    assertTrue(trial.found() >= 57, () -> "found " + trial.found());
    assertTrue(trial.falsePer200Cells() <= 1, () -> "false " + trial.falseFindings());
  }
}
