package org.comparanda.exchange.shelf;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.comparanda.exchange.csv.HarmlessCsv;

/**
 * A table as a workbook of one sheet (Office Open XML, ECMA-376 part 1), written row by row.
 * Columns of measurements hold numbers, all others text: a catalogue number keeps its zeros.
 */
final class SheetFile implements TableRows, AutoCloseable {
  private static final String DECLARATION =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE =
      "http://schemas.openxmlformats.org/package/2006/relationships";
  private static final String TYPES =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  /** Programs that read workbooks expect at least one of each. */
  private static final String STYLES =
      "<fonts count=\"1\"><font><sz val=\"11\"/></font></fonts>"
          + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill>"
          + "<fill><patternFill patternType=\"gray125\"/></fill></fills>"
          + "<borders count=\"1\"><border/></borders>"
          + "<cellStyleXfs count=\"1\"><xf/></cellStyleXfs><cellXfs count=\"1\"><xf/></cellXfs>";

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?(E-?\\d+)?");

  private final ZipOutputStream zip;
  private final Writer sheet;
  private List<Boolean> numbers = List.of();
  private long rows;

  SheetFile(OutputStream bytes) throws IOException {
    zip = new ZipOutputStream(bytes);
    part(
        "[Content_Types].xml",
        "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default"
            + " Extension=\"rels\""
            + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default"
            + " Extension=\"xml\" ContentType=\"application/xml\"/>"
            + type("/xl/workbook.xml", "sheet.main+xml")
            + type("/xl/worksheets/sheet1.xml", "worksheet+xml")
            + type("/xl/styles.xml", "styles+xml")
            + "</Types>");
    part("_rels/.rels", relations(relation(1, "officeDocument", "xl/workbook.xml")));
    part(
        "xl/workbook.xml",
        "<workbook xmlns=\""
            + MAIN
            + "\" xmlns:r=\""
            + OFFICE
            + "\"><sheets><sheet name=\"Shelf\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
    part(
        "xl/_rels/workbook.xml.rels",
        relations(
            relation(1, "worksheet", "worksheets/sheet1.xml")
                + relation(2, "styles", "styles.xml")));
    part("xl/styles.xml", "<styleSheet xmlns=\"" + MAIN + "\">" + STYLES + "</styleSheet>");
    zip.putNextEntry(entry("xl/worksheets/sheet1.xml"));
    sheet = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8));
    sheet.write(DECLARATION + "<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
  }

  private static String type(String part, String what) {
    return "<Override PartName=\"" + part + "\" ContentType=\"" + TYPES + what + "\"/>";
  }

  private static String relations(String each) {
    return "<Relationships xmlns=\"" + PACKAGE + "\">" + each + "</Relationships>";
  }

  private static String relation(int number, String what, String target) {
    return "<Relationship Id=\"rId"
        + number
        + "\" Type=\""
        + OFFICE
        + "/"
        + what
        + "\" Target=\""
        + target
        + "\"/>";
  }

  private static ZipEntry entry(String name) {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(LocalDateTime.of(1980, 1, 1, 0, 0)); // equal tables are equal files
    return entry;
  }

  private void part(String name, String text) throws IOException {
    zip.putNextEntry(entry(name));
    zip.write((DECLARATION + text).getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  /** Whether a text can stand in a cell: XML has no other control characters than white space. */
  static boolean holds(String text) {
    return text.chars().allMatch(c -> c >= ' ' || c == '\t' || c == '\n' || c == '\r');
  }

  @Override
  public void row(List<String> cells) throws IOException {
    if (rows == 0) {
      numbers = cells.stream().map(ShelfTable::isOfNumbers).toList();
    }
    sheet.write("<row r=\"" + ++rows + "\">");
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      if (!cell.isEmpty()) {
        boolean number = rows > 1 && numbers.get(i) && NUMBER.matcher(cell).matches();
        sheet.write("<c r=\"" + letters(i) + rows + "\"");
        sheet.write(
            number
                ? "><v>" + cell + "</v></c>"
                : " t=\"inlineStr\"><is><t xml:space=\"preserve\">"
                    + escaped(HarmlessCsv.harmless(cell))
                    + "</t></is></c>");
      }
    }
    sheet.write("</row>");
  }

  private static String letters(int index) {
    StringBuilder letters = new StringBuilder();
    for (int i = index; i >= 0; i = i / 26 - 1) {
      letters.insert(0, (char) ('A' + i % 26));
    }
    return letters.toString();
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '\t', '\n', '\r' -> escaped.append("&#").append((int) c).append(';');
        default -> escaped.append(c < ' ' ? '?' : c);
      }
    }
    return escaped.toString();
  }

  /** Ends the workbook; the stream below stays open. */
  @Override
  public void close() throws IOException {
    sheet.write("</sheetData></worksheet>");
    sheet.flush();
    zip.closeEntry();
    zip.finish();
  }
}
