package org.comparanda.storage;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.comparanda.check.AcceptedFinding;
import org.comparanda.check.AcceptedFindings;
import org.comparanda.check.FindingKind;
import org.comparanda.measurement.PersonId;
import org.jdbi.v3.core.mapper.RowMapper;

/** Accepted findings in the collection's file; text that a finding lacks is an absent cell. */
record SqlAcceptedFindings(Database database, DayBookRows dayBook) implements AcceptedFindings {
  private static final RowMapper<AcceptedFinding> ROW =
      (row, context) ->
          new AcceptedFinding(
              FindingKind.valueOf(row.getString("kind")),
              Optional.ofNullable(row.getString("animal")),
              Optional.ofNullable(row.getString("bone")),
              Optional.ofNullable(row.getString("place")),
              Optional.ofNullable(row.getString("content")),
              Optional.ofNullable(row.getString("basis")),
              row.getString("reason"),
              Optional.ofNullable(row.getString("who")).map(PersonId::new),
              Instant.parse(row.getString("at")));

  @Override
  public List<AcceptedFinding> all() {
    return database.read(
        h -> h.createQuery("select * from accepted_finding order by number").map(ROW).list());
  }

  @Override
  public void accept(AcceptedFinding finding) {
    database.write(
        h -> {
          long number =
              h.createQuery("select coalesce(max(number), 0) + 1 from accepted_finding")
                  .mapTo(Long.class)
                  .one();
          h.createUpdate(
                  "insert into accepted_finding"
                      + " (number, kind, animal, bone, place, content, basis, reason, who, at) values"
                      + " (:number, :kind, :animal, :bone, :place, :content, :basis, :reason, :who, :at)")
              .bind("number", number)
              .bind("kind", finding.kind().name())
              .bind("animal", finding.animal().orElse(null))
              .bind("bone", finding.bone().orElse(null))
              .bind("place", finding.column().orElse(null))
              .bind("content", finding.value().orElse(null))
              .bind("basis", finding.basis().orElse(null))
              .bind("reason", finding.reason())
              .bind("who", finding.who().map(PersonId::value).orElse(null))
              .bind("at", finding.at().toString())
              .execute();
          finding
              .who()
              .map(dayBook::by)
              .orElse(dayBook)
              .wrote(h, Kept.ACCEPTED, number, finding.reason());
          return number;
        });
  }
}
