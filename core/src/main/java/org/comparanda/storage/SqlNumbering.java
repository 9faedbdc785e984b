package org.comparanda.storage;

import java.time.Clock;
import java.util.function.Function;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.NumberRule;
import org.comparanda.tray.NumberRule.NumberSeries;
import org.comparanda.tray.Numbering;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.jdbi.v3.core.Handle;

/** Bone numbers in the collection's file, which itself refuses to give one twice. */
record SqlNumbering(Database database, DayBookRows dayBook, Clock clock) implements Numbering {
  @Override
  public NumberRule ruleOf(TrayId tray) {
    return database.read(h -> rule(h, tray));
  }

  @Override
  public void setRule(TrayId tray, NumberRule rule) {
    database.write(
        h -> {
          h.createUpdate(
                  "insert into number_rule (tray_id, rule) values (:tray, :rule)"
                      + " on conflict (tray_id) do update set rule = excluded.rule")
              .bind("tray", tray.value())
              .bind("rule", rule.pattern())
              .execute();
          dayBook.wrote(h, Kept.NUMBER_RULE, tray.value(), rule.pattern());
          return rule;
        });
  }

  @Override
  public BoneId next(Tray tray) {
    return database.read(
        h -> {
          NumberSeries series = series(h, tray);
          return series.number(next(h, series));
        });
  }

  @Override
  public TrayBone put(Tray tray, Function<BoneId, TrayBone> bone) {
    return database.write(
        h -> {
          NumberSeries series = series(h, tray);
          long running = next(h, series);
          TrayBone made = bone.apply(series.number(running));
          h.createUpdate(
                  "insert into number_given (series, number, bone_id)"
                      + " values (:series, :number, :bone)")
              .bind("series", series.key())
              .bind("number", running)
              .bind("bone", made.id().value())
              .execute();
          dayBook.wrote(h, Kept.NUMBER, made.id().value(), "");
          TrayRows.save(h, dayBook, made);
          return made;
        });
  }

  private NumberSeries series(Handle h, Tray tray) {
    return rule(h, tray.id()).series(tray, clock.instant().atZone(clock.getZone()).getYear());
  }

  private static NumberRule rule(Handle h, TrayId tray) {
    return h.createQuery("select rule from number_rule where tray_id = :tray")
        .bind("tray", tray.value())
        .mapTo(String.class)
        .findOne()
        .map(NumberRule::new)
        .orElse(NumberRule.withDefaults());
  }

  /** One more than the highest given by rule or standing on a bone that was numbered by hand. */
  private static long next(Handle h, NumberSeries series) {
    long given =
        h.createQuery("select coalesce(max(number), 0) from number_given where series = :series")
            .bind("series", series.key())
            .mapTo(Long.class)
            .one();
    long standing =
        h
            .createQuery("select id from tray_bone where substr(id, 1, :length) = :before")
            .bind("length", series.before().length())
            .bind("before", series.before())
            .mapTo(String.class)
            .stream()
            .mapToLong(id -> series.runningIn(new BoneId(id)))
            .max()
            .orElse(0);
    return Math.max(given, standing) + 1;
  }
}
