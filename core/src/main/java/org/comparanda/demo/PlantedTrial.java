package org.comparanda.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.check.AnimalChecks;
import org.comparanda.check.BoneEntry;
import org.comparanda.check.Finding;
import org.comparanda.check.FindingKind;
import org.comparanda.check.ShelfEntries;
import org.comparanda.demo.PlantedFaults.Fault;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.tables.ReferenceTables;

/**
 * How many of the planted faults the integrity list finds, and how many sound cells it names.
 *
 * <p>A fault is found when a finding of its own kind names its animal, and the bone and column
 * where it has one cell; an outlier is a fault of the bone, since of two measurements nothing tells
 * which is the odd one. The other side of a bone counts as the bone. A finding is false when no
 * fault was planted into its bone or the other side of it. Taxa with few animals are not counted:
 * that is true of them, and no cell's fault.
 *
 * @param planted faults with the findings of their own kind
 * @param falseFindings findings on sound bones
 * @param cleanCells readings on sound bones
 */
public record PlantedTrial(List<Tried> planted, List<Finding> falseFindings, long cleanCells) {
  private static final Map<FaultKind, FindingKind> KINDS = new EnumMap<>(FaultKind.class);

  static {
    KINDS.put(FaultKind.TIMES_TEN, FindingKind.UNIT_SLIP);
    KINDS.put(FaultKind.TIMES_INCH, FindingKind.UNIT_SLIP);
    KINDS.put(FaultKind.DIGITS_SWAPPED, FindingKind.SWAPPED_DIGITS);
    KINDS.put(FaultKind.SIDES_APART, FindingKind.SIDES_DIFFER);
    KINDS.put(FaultKind.OUTLIER, FindingKind.OUTLIER);
    KINDS.put(FaultKind.PART_LONGER, FindingKind.PART_LONGER);
    KINDS.put(FaultKind.TAXON_MISSPELT, FindingKind.SPELLED_TWO_WAYS);
    KINDS.put(FaultKind.NUMBER_TWICE, FindingKind.NUMBER_TWICE);
    KINDS.put(FaultKind.TWO_TAXA, FindingKind.TWO_TAXA);
    KINDS.put(FaultKind.YOUNG_AS_ADULT, FindingKind.YOUNG_IN_FIT);
    KINDS.put(FaultKind.CAST_UNFLAGGED, FindingKind.CAST_IN_FIT);
    KINDS.put(FaultKind.CODE_UNKNOWN, FindingKind.UNKNOWN_CODE);
  }

  public PlantedTrial {
    planted = List.copyOf(planted);
    falseFindings = List.copyOf(falseFindings);
  }

  /** One planted fault and the finding that names it. */
  public record Tried(Fault fault, Optional<Finding> finding) {}

  /** Plants the faults of {@code faults.csv} and asks every check. */
  public static PlantedTrial of(ReferenceTables tables, long seed) {
    PlantedFaults faults = PlantedFaults.intoTheShelf(tables.protocol(), seed);
    List<BoneEntry> rows = read(tables, faults.csv());
    List<Finding> findings =
        AnimalChecks.findings(new ShelfEntries(rows, tables.protocol(), tables.taxa()));
    Set<Bone> faulty = new HashSet<>();
    for (Fault fault : faults.faults()) {
      faulty.add(Bone.of(animalNow(fault), fault.bone()));
    }
    return new PlantedTrial(
        faults.faults().stream()
            .map(f -> new Tried(f, findings.stream().filter(found -> names(found, f)).findFirst()))
            .toList(),
        findings.stream()
            .filter(f -> f.kind() != FindingKind.FEW_ANIMALS)
            .filter(f -> sound(f.animal().orElse(""), f.bone().orElse("all"), faulty))
            .toList(),
        rows.stream()
            .filter(r -> sound(r.animal(), r.bone(), faulty))
            .mapToLong(r -> r.values().size())
            .sum());
  }

  /** Faults found. */
  public long found() {
    return planted.stream().filter(t -> t.finding().isPresent()).count();
  }

  /** False findings in 200 clean cells. */
  public double falsePer200Cells() {
    return 200.0 * falseFindings.size() / cleanCells;
  }

  private static String animalNow(Fault fault) {
    return fault.kind() == FaultKind.NUMBER_TWICE ? fault.now() : fault.animal();
  }

  private static boolean names(Finding finding, Fault fault) {
    return finding.kind() == KINDS.get(fault.kind())
        && finding.animal().equals(Optional.of(animalNow(fault)))
        && (fault.bone().equals("all") || sameCell(finding, fault));
  }

  private static boolean sameCell(Finding finding, Fault fault) {
    boolean column =
        fault.kind() == FaultKind.OUTLIER
            || sameColumn(finding.column().orElse(""), fault.column());
    return column && Bone.of("", finding.bone().orElse("")).equals(Bone.of("", fault.bone()));
  }

  private static boolean sameColumn(String code, String header) {
    return header.equals(code) || header.startsWith(code + " [");
  }

  /** An element of an animal, both sides; every element where the bone is "all". */
  private record Bone(String animal, String element) {
    static Bone of(String animal, String bone) {
      return new Bone(animal, bone.replaceAll(" (left|right|axial)$", ""));
    }
  }

  private static boolean sound(String animal, String bone, Set<Bone> faulty) {
    return !faulty.contains(Bone.of(animal, bone)) && !faulty.contains(Bone.of(animal, "all"));
  }

  private static List<BoneEntry> read(ReferenceTables tables, String csv) {
    try {
      Path table = Files.createTempFile("planted", ".csv");
      try {
        Files.writeString(table, csv);
        return TableReader.of(tables.protocol(), tables.taxa(), TableOptions.withDefaults())
            .entries(table)
            .fold(
                read -> read.content().entries(),
                report -> {
                  throw new IllegalStateException(String.join("\n", report.lines()));
                });
      } finally {
        Files.delete(table);
      }
    } catch (IOException problem) {
      throw new UncheckedIOException("The faulty copy could not be unpacked.", problem);
    }
  }
}
