package org.comparanda.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.WhichBone;
import org.comparanda.measurement.Outline;
import org.comparanda.measurement.Protocol;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.taxon.TaxonTree;

/**
 * The reference tables, read once and checked: every key once, every link resolved.
 *
 * @param protocol elements, measurements, part rules
 * @param outlines drawings, one per element that has one
 * @param taxa taxon tree with look-alikes
 * @param equations published size equations
 * @param whichBone the key from shape to element
 */
public record ReferenceTables(
    Protocol protocol,
    List<Outline> outlines,
    TaxonTree taxa,
    List<PublishedEquation> equations,
    WhichBone whichBone) {
  public ReferenceTables {
    outlines = List.copyOf(outlines);
    equations = List.copyOf(equations);
  }

  /** The tables packed with the program, in English. Errors: {@link BrokenTable}. */
  public static ReferenceTables shipped() {
    return shipped(Locale.ENGLISH);
  }

  /**
   * The tables packed with the program, what they say to a person in a language: definitions,
   * mistakes, captions, questions, names of elements. Keys and codes are the same in all. Errors:
   * {@link BrokenTable}.
   */
  public static ReferenceTables shipped(Locale language) {
    Protocol protocol =
        ProtocolTables.read(
            TableFile.shipped("elements.json", language),
            TableFile.shipped("measurements.json", language));
    TaxonTree taxa = TaxonTable.read(TableFile.shipped("taxa.json", language));
    return new ReferenceTables(
        protocol,
        OutlineTable.read(TableFile.shipped("outlines.json", language), protocol),
        taxa,
        EquationTable.read(TableFile.shipped("equations.json", language), protocol, taxa),
        WhichBoneTable.read(TableFile.shipped("element-key.json", language), protocol));
  }

  /**
   * With a lab's own equations beside the shipped ones, from the text of a file of the same form. A
   * row wins by a key of its own. Errors: {@link BrokenTable} naming file, row and field.
   */
  public ReferenceTables withEquations(String file, String text) {
    List<PublishedEquation> all = new ArrayList<>(equations);
    all.addAll(EquationTable.readBeside(equations, TableFile.of(file, text), protocol, taxa));
    return new ReferenceTables(protocol, outlines, taxa, all, whichBone);
  }

  /** With another tree of taxa, such as the shipped one with a house's own names in it. */
  public ReferenceTables withTaxa(TaxonTree other) {
    return new ReferenceTables(protocol, outlines, other, equations, whichBone);
  }

  /** The drawing of an element, if there is one. */
  public Optional<Outline> outline(ElementKey element) {
    return outlines.stream().filter(o -> o.element().equals(element)).findFirst();
  }
}
