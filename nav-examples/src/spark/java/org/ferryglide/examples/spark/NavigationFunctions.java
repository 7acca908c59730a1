package org.ferryglide.examples.spark;

import java.io.Serializable;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.api.java.UDF4;
import org.apache.spark.sql.types.DataTypes;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;

/**
 * The kernels as functions of SQL, on WGS84. A null among the arguments gives null; what a kernel
 * answers with NaN is NaN.
 *
 * <pre>{@code
 * NavigationFunctions.register(spark);
 * spark.sql("select leg, rhumb_distance_m(lat1, lon1, lat2, lon2) from legs");
 * }</pre>
 */
public final class NavigationFunctions {
  private NavigationFunctions() {}

  /**
   * Makes them known to a session: {@code rhumb_course_deg}, {@code rhumb_distance_m}, {@code
   * geodesic_initial_deg}, {@code geodesic_distance_m}, {@code leg_excess_m} and {@code
   * leg_separation_m}, each of lat1, lon1, lat2, lon2 in degrees, and {@code variation_deg} of
   * decimal year, latitude, longitude and height in metres, by WMM2025 from 2025 to 2030.
   *
   * @param spark the session
   */
  public static void register(SparkSession spark) {
    register(spark, "rhumb_course_deg", comparison(LegComparisons.RHUMB_COURSE));
    register(spark, "rhumb_distance_m", comparison(LegComparisons.RHUMB_LENGTH));
    register(spark, "geodesic_initial_deg", comparison(LegComparisons.INITIAL_COURSE));
    register(spark, "geodesic_distance_m", comparison(LegComparisons.GEODESIC_LENGTH));
    register(spark, "leg_excess_m", comparison(LegComparisons.EXCESS));
    register(spark, "leg_separation_m", NavigationFunctions::separation);
    register(spark, "variation_deg", new DatedVariation());
  }

  /** What is worked from four figures. */
  @FunctionalInterface
  interface OfFour extends Serializable {
    double of(double a, double b, double c, double d);
  }

  private static void register(SparkSession spark, String name, OfFour function) {
    UDF4<Double, Double, Double, Double, Double> nullable =
        (a, b, c, d) ->
            a == null || b == null || c == null || d == null ? null : function.of(a, b, c, d);
    spark.udf().register(name, nullable, DataTypes.DoubleType);
  }

  private static OfFour comparison(int figure) {
    return (lat1, lon1, lat2, lon2) -> {
      double[] out = new double[LegComparisons.WIDTH];
      LegComparisons.compare(Ellipsoid.WGS84, lat1, lon1, lat2, lon2, out, 0);
      return out[figure];
    };
  }

  private static double separation(double lat1, double lon1, double lat2, double lon2) {
    double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION];
    LegComparisons.compareWithSeparation(Ellipsoid.WGS84, lat1, lon1, lat2, lon2, out, 0);
    return out[LegComparisons.SEPARATION];
  }
}
