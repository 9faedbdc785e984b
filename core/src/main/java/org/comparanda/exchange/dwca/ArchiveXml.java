package org.comparanda.exchange.dwca;

import java.io.StringWriter;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.comparanda.dossier.HeldBack;

/** meta.xml by the text guide of Darwin Core, and eml.xml with who, what and when. */
final class ArchiveXml {
  private static final String TEXT = "http://rs.tdwg.org/dwc/text/";

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter xml;

  private ArchiveXml() throws XMLStreamException {
    xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
    xml.writeStartDocument("UTF-8", "1.0");
  }

  static String meta(DataFile<?> core, List<DataFile<?>> extensions) throws XMLStreamException {
    ArchiveXml meta = new ArchiveXml();
    meta.xml.writeStartElement("archive");
    meta.xml.writeDefaultNamespace(TEXT);
    meta.xml.writeAttribute("metadata", "eml.xml");
    meta.file("core", "id", core);
    for (DataFile<?> extension : extensions) {
      meta.file("extension", "coreid", extension);
    }
    return meta.end();
  }

  private void file(String element, String key, DataFile<?> file) throws XMLStreamException {
    xml.writeStartElement(element);
    xml.writeAttribute("encoding", "UTF-8");
    xml.writeAttribute("fieldsTerminatedBy", ",");
    xml.writeAttribute("linesTerminatedBy", "\\n");
    xml.writeAttribute("fieldsEnclosedBy", "\"");
    xml.writeAttribute("ignoreHeaderLines", "1");
    xml.writeAttribute("rowType", file.rowType());
    xml.writeStartElement("files");
    leaf("location", file.name());
    xml.writeEndElement();
    xml.writeEmptyElement(key);
    xml.writeAttribute("index", "0");
    for (int i = 0; i < file.columns().size(); i++) {
      xml.writeEmptyElement("field");
      xml.writeAttribute("index", String.valueOf(i + 1));
      xml.writeAttribute("term", file.columns().get(i).term());
    }
    xml.writeEndElement();
  }

  static String eml(ArchiveFacts facts, HeldBack heldBack) throws XMLStreamException {
    ArchiveXml eml = new ArchiveXml();
    eml.xml.writeStartElement("eml", "eml", "https://eml.ecoinformatics.org/eml-2.2.0");
    eml.xml.writeNamespace("eml", "https://eml.ecoinformatics.org/eml-2.2.0");
    eml.xml.writeAttribute("packageId", facts.dayBookHead() + "/" + facts.at());
    eml.xml.writeAttribute("system", "https://eml.ecoinformatics.org");
    eml.xml.writeStartElement("dataset");
    eml.leaf("title", facts.title());
    eml.party("creator");
    eml.leaf("pubDate", LocalDate.ofInstant(facts.at(), ZoneOffset.UTC).toString());
    eml.xml.writeStartElement("abstract");
    eml.leaf(
        "para",
        "One core row is one bone. Names are calls that people made, with their history;"
            + " suggestions of the program are not in here.");
    eml.leaf("para", "Withheld: " + heldBack.sentence() + ".");
    eml.leaf("para", "Written by " + facts.program() + "; Day Book " + facts.dayBookHead() + ".");
    eml.xml.writeEndElement();
    eml.party("contact");
    eml.xml.writeEndElement();
    return eml.end();
  }

  private void party(String role) throws XMLStreamException {
    xml.writeStartElement(role);
    leaf("organizationName", "The collection that this archive came from");
    xml.writeEndElement();
  }

  private void leaf(String element, String content) throws XMLStreamException {
    xml.writeStartElement(element);
    xml.writeCharacters(content);
    xml.writeEndElement();
  }

  private String end() throws XMLStreamException {
    xml.writeEndElement();
    xml.writeEndDocument();
    xml.close();
    return text.toString();
  }
}
