package org.comparanda.suggestion;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Processor time of the thread that answers, which says more than the clock on a machine that does
 * other work, too. Arguments: animals, rounds.
 */
final class AnswerProcessorTime {
  private AnswerProcessorTime() {}

  public static void main(String... arguments) {
    AnswerBenchmark bench = new AnswerBenchmark();
    bench.animals = Integer.parseInt(arguments[0]);
    int rounds = Integer.parseInt(arguments[1]);
    bench.fill();
    List<Double> known = new ArrayList<>();
    List<Double> fresh = new ArrayList<>();
    for (int round = 0; round < rounds; round++) {
      bench.forget();
      boolean counts = round >= rounds / 2;
      time(bench::onASetKnown, known, counts);
      time(bench::onASetNew, fresh, counts);
    }
    tell("set known", known);
    tell("set new, shelf just read", fresh);
  }

  private static void time(Runnable task, List<Double> times, boolean counts) {
    long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    task.run();
    double ms = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun) / 1e6;
    if (counts) {
      times.add(ms);
    }
  }

  private static void tell(String what, List<Double> times) {
    List<Double> sorted = times.stream().sorted().toList();
    System.out.println(
        String.format(
            Locale.ROOT,
            "%s: median %.1f ms, 95th percentile %.1f ms of %d",
            what,
            sorted.get(sorted.size() / 2),
            sorted.get((int) Math.ceil(0.95 * sorted.size()) - 1),
            sorted.size()));
  }
}
