package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.SymmetricMatrix;

/** Where maximisation stands: means of the groups and the covariance within them, divisor n. */
record MaximisationState(List<double[]> means, SymmetricMatrix covariance) {
  /** Steps are straight when they bend less than this part: then there is nothing to leap to. */
  private static final double STRAIGHT = 1e-12;

  /** The largest move of any mean or covariance to another state, in standard deviations there. */
  double change(MaximisationState to) {
    double largest = 0;
    for (double move : moves(to, to)) {
      largest = Math.max(largest, Math.abs(move));
    }
    return largest;
  }

  /** Where two steps point to; none where they don't bend, or where no spread would be left. */
  Optional<MaximisationState> leap(MaximisationState one, MaximisationState two) {
    double[] first = moves(one, two);
    double[] second = one.moves(two, two);
    double length = Math.sqrt(Vectors.squaredDistance(first, new double[first.length]));
    double bend = Math.sqrt(Vectors.squaredDistance(second, first));
    if (!(bend > STRAIGHT * length) || bend >= length) {
      return Optional.empty();
    }
    double far = length / bend;
    // this + 2 far (one - this) + far² (two - 2 one + this)
    double own = 1 - 2 * far + far * far;
    double middle = 2 * far - 2 * far * far;
    double last = far * far;
    List<double[]> leaped = new ArrayList<>();
    for (int g = 0; g < means.size(); g++) {
      double[] sum = new double[covariance.size()];
      sum = Vectors.plus(sum, own, means.get(g));
      sum = Vectors.plus(sum, middle, one.means.get(g));
      leaped.add(Vectors.plus(sum, last, two.means.get(g)));
    }
    SymmetricMatrix spread =
        covariance.times(own).plus(one.covariance.times(middle)).plus(two.covariance.times(last));
    for (int j = 0; j < spread.size(); j++) {
      if (!(spread.get(j, j) > 0)) {
        return Optional.empty();
      }
    }
    return Optional.of(new MaximisationState(leaped, spread));
  }

  /** Every move to another state, in standard deviations of a third. */
  private double[] moves(MaximisationState to, MaximisationState unit) {
    int p = covariance.size();
    double[] moves = new double[p * p + means.size() * p];
    int at = 0;
    for (int i = 0; i < p; i++) {
      double deviation = Math.sqrt(unit.covariance.get(i, i));
      for (int j = 0; j < p; j++) {
        double both = deviation * Math.sqrt(unit.covariance.get(j, j));
        moves[at++] = (to.covariance.get(i, j) - covariance.get(i, j)) / both;
      }
      for (int g = 0; g < means.size(); g++) {
        moves[at++] = (to.means.get(g)[i] - means.get(g)[i]) / deviation;
      }
    }
    return moves;
  }
}
