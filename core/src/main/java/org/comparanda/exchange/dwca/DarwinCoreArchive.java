package org.comparanda.exchange.dwca;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLStreamException;
import org.comparanda.dossier.HeldBack;

/**
 * Bones as a Darwin Core Archive: one core row a bone, its calls and its readings as extensions.
 * Source: Darwin Core text guide, 2023-09-13.
 */
public final class DarwinCoreArchive {
  private DarwinCoreArchive() {}

  /**
   * Writes the archive.
   *
   * @return rows written, by file. Errors: {@link IOException} if it can't be written
   */
  public static Map<String, Integer> write(OutputStream out, HeldBack bones, ArchiveFacts facts)
      throws IOException {
    ArchiveTables tables = new ArchiveTables(facts, bones.open());
    DataFile<?> core = tables.core();
    List<DataFile<?>> extensions = List.of(tables.identifications(), tables.measurements());
    Map<String, Integer> rows = new LinkedHashMap<>();
    try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
      entry(zip, facts, "meta.xml", ArchiveXml.meta(core, extensions));
      entry(zip, facts, "eml.xml", ArchiveXml.eml(facts, bones));
      entry(zip, facts, core.name(), core.csv("id"));
      rows.put(core.name(), core.rows().size());
      for (DataFile<?> extension : extensions) {
        entry(zip, facts, extension.name(), extension.csv("coreid"));
        rows.put(extension.name(), extension.rows().size());
      }
    } catch (XMLStreamException problem) {
      throw new IOException("The description of the archive could not be written.", problem);
    }
    return rows;
  }

  private static void entry(ZipOutputStream zip, ArchiveFacts facts, String name, String text)
      throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(facts.at().toEpochMilli());
    zip.putNextEntry(entry);
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }
}
