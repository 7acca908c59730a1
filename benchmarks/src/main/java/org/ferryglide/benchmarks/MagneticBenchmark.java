package org.ferryglide.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.MagneticPlace;
import org.ferryglide.nav.magnetic.MagneticSnapshot;
import org.ferryglide.nav.position.Position;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.orekit.models.earth.GeoMagneticElements;
import org.orekit.models.earth.GeoMagneticField;

/**
 * What do the elements of WMM2025 cost at one place, with and without their yearly change, with a
 * new date each time, and at a prepared place, beside Orekit's evaluator of the same coefficients?
 *
 * <p>Before anything is timed both are asked at every place and date used, and must agree within
 * 1e-6 nanotesla and 1e-9 degrees.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class MagneticBenchmark extends InFixedHeap {
  private static final int PLACES = 1024;
  private static final double YEAR = 2026.5;
  private static final double NANOTESLA_IN_TESLA = 1e9; // Orekit answers in tesla and radians

  private MagneticModel model;
  private MagneticSnapshot snapshot;
  private MagneticPlace place;
  private GeoMagneticField orekitModel;
  private GeoMagneticField orekit;
  private final double[] latitudes = new double[PLACES];
  private final double[] longitudes = new double[PLACES];
  private final double[] years = new double[PLACES];
  private final double[] row = new double[MagneticSnapshot.ELEMENTS_WITH_CHANGE];
  private final double[] many = new double[MagneticSnapshot.ELEMENTS * PLACES];
  private int next;

  /** Orekit's evaluator, given the coefficients of this library's own file. */
  private static final class InMemory extends GeoMagneticField {
    InMemory() {
      super("WMM2025", 2025.0, 12, 12, 2025.0, 2030.0);
      try (InputStream stream = MagneticModel.class.getResourceAsStream("wmm2025.txt");
          BufferedReader reader =
              new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
          if (Character.isDigit(line.charAt(0))) {
            String[] words = line.split(" ", -1);
            int n = Integer.parseInt(words[0]);
            int m = Integer.parseInt(words[1]);
            setMainFieldCoefficients(
                n, m, Double.parseDouble(words[2]), Double.parseDouble(words[3]));
            setSecularVariationCoefficients(
                n, m, Double.parseDouble(words[4]), Double.parseDouble(words[5]));
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** Prepares both and makes sure that they agree. */
  @Setup
  public void prepare() {
    model = MagneticModel.wmm2025();
    snapshot = model.atDecimalYear(YEAR);
    place = model.place(Position.ofDegrees(50.1, -5.5));
    orekitModel = new InMemory();
    orekit = orekitModel.transformModel(YEAR);
    Random random = new Random(2025);
    for (int i = 0; i < PLACES; i++) {
      latitudes[i] = 89.0 * (2.0 * random.nextDouble() - 1.0);
      longitudes[i] = 360.0 * random.nextDouble() - 180.0;
      years[i] = 2025.0 + 5.0 * random.nextDouble();
      snapshot.elementsWithChange(latitudes[i], longitudes[i], 0.0, row, 0);
      agree(orekitAt(orekit, i));
      model.elementsWithChange(years[i], latitudes[i], longitudes[i], 0.0, row, 0);
      agree(orekitAt(orekitModel.transformModel(years[i]), i));
    }
  }

  private GeoMagneticElements orekitAt(GeoMagneticField field, int i) {
    return field.calculateField(Math.toRadians(latitudes[i]), Math.toRadians(longitudes[i]), 0.0);
  }

  private void agree(GeoMagneticElements theirs) {
    near(NANOTESLA_IN_TESLA * theirs.getFieldVector().getX(), row[0], 1e-6);
    near(NANOTESLA_IN_TESLA * theirs.getFieldVector().getY(), row[1], 1e-6);
    near(NANOTESLA_IN_TESLA * theirs.getFieldVector().getZ(), row[2], 1e-6);
    near(NANOTESLA_IN_TESLA * theirs.getHorizontalIntensity(), row[3], 1e-6);
    near(NANOTESLA_IN_TESLA * theirs.getTotalIntensity(), row[4], 1e-6);
    near(Math.toDegrees(theirs.getInclination()), row[5], 1e-9);
    near(Math.toDegrees(theirs.getDeclination()), row[6], 1e-9);
  }

  private static void near(double theirs, double ours, double tolerance) {
    if (!(Math.abs(theirs - ours) <= tolerance)) {
      throw new IllegalStateException("Orekit gives " + theirs + ", but we give " + ours);
    }
  }

  private int next() {
    next = (next + 1) & (PLACES - 1);
    return next;
  }

  /** The seven elements at a place, the model already at its date. */
  @Benchmark
  public double[] elements() {
    int i = next();
    snapshot.elements(latitudes[i], longitudes[i], 0.0, row, 0);
    return row;
  }

  /** The seven elements and their yearly changes. */
  @Benchmark
  public double[] elementsWithChange() {
    int i = next();
    snapshot.elementsWithChange(latitudes[i], longitudes[i], 0.0, row, 0);
    return row;
  }

  /** The seven elements and their changes, another place and another date each time. */
  @Benchmark
  public double[] newDateEachTime() {
    int i = next();
    model.elementsWithChange(years[i], latitudes[i], longitudes[i], 0.0, row, 0);
    return row;
  }

  /** The elements at many places in one call, per place. */
  @Benchmark
  @OperationsPerInvocation(PLACES)
  public double[] elementsOfManyPlaces() {
    snapshot.elements(latitudes, longitudes, 0.0, 0, PLACES, many, 0);
    return many;
  }

  /** The declination at a prepared place, another date each time. */
  @Benchmark
  public double preparedPlace() {
    return place.declinationDegrees(years[next()]);
  }

  /** Moving the model to a date. */
  @Benchmark
  public MagneticSnapshot moveToDate() {
    return model.atDecimalYear(years[next()]);
  }

  /** Orekit's elements at a place, the model already at its date. */
  @Benchmark
  public GeoMagneticElements orekitElements() {
    return orekitAt(orekit, next());
  }

  /** Orekit's elements at a place, another date each time. */
  @Benchmark
  public GeoMagneticElements orekitNewDateEachTime() {
    int i = next();
    return orekitAt(orekitModel.transformModel(years[i]), i);
  }
}
