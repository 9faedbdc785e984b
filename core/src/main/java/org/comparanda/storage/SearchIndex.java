package org.comparanda.storage;

import org.jdbi.v3.core.Handle;

/**
 * The index of words. The file's own triggers say what is due; it is taken in at the end of each
 * change, all at once, since the index writes itself out after every single statement.
 */
final class SearchIndex {
  private SearchIndex() {}

  /** Takes in what is due: the old words of a row go, the new ones come. */
  static void takeIn(Handle h) {
    for (String part :
        h.createQuery("select distinct part from search_due").mapTo(String.class).list()) {
      String due = " in (select renewed_by from search_due where part = '" + part + "')";
      h.execute("delete from search_text where part = '" + part + "' and renewed_by" + due);
      h.execute(
          "insert into search_text (part, renewed_by, opens, hit_key, who, content)"
              + " select * from search_of_"
              + part
              + " where renewed_by"
              + due);
      h.execute("delete from search_due where part = '" + part + "'");
    }
  }
}
