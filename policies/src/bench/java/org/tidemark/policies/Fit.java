package org.tidemark.policies;

import java.util.List;

/**
 * The exponents a and b of {@code time = c x first^a x second^b} that come closest, by least
 * squares over the logarithms.
 */
record Fit(double first, double second) {
  static Fit of(List<double[]> points) {
    double[] middle = new double[3];
    points.forEach(
        p -> {
          for (int i = 0; i < 3; i++) {
            middle[i] += Math.log(p[i]) / points.size();
          }
        });
    double[][] sums = new double[3][3];
    for (double[] p : points) {
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          sums[i][j] += (Math.log(p[i]) - middle[i]) * (Math.log(p[j]) - middle[j]);
        }
      }
    }
    double both = sums[0][0] * sums[1][1] - sums[0][1] * sums[0][1];
    return new Fit(
        (sums[0][2] * sums[1][1] - sums[1][2] * sums[0][1]) / both,
        (sums[1][2] * sums[0][0] - sums[0][2] * sums[0][1]) / both);
  }
}
