package org.ferryglide.nav.chart;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.Variation;

/**
 * A tool that takes a bearing off a chart: what it is lined up on, the north it reads, how finely
 * it is graduated, and what error it leaves.
 *
 * <pre>{@code
 * ChartTool.BASEPLATE_COMPASS.typicalErrorDegrees(60.0); // a leg of 60 mm
 * ChartTool.PARALLEL_RULES.north(); // TRUE_OR_MAGNETIC_OF_PRINTED_YEAR
 * ChartTool mine = ChartTool.TURNING_ROSE_PLOTTER.withEdge(new StraightEdge(300.0, 0.7));
 * }</pre>
 *
 * <p>The error of a bearing is made up of four parts: laying the edge along the leg, laying the
 * tool along its reference, reading the graduation (a reading to the nearest mark is off by at most
 * half a division, 1/√12 of it as a standard deviation), and carrying the direction from one to the
 * other. They are taken as independent. The figures of the four tools here are common practice, no
 * source; if you have measured your own, give them by the methods whose names begin with {@code
 * with}.
 */
public final class ChartTool implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double BOTH_ENDS = Math.sqrt(2.0);
  private static final double EVEN_SPREAD = Math.sqrt(12.0);

  /**
   * What a tool is lined up on to find its north.
   *
   * <pre>{@code
   * ChartTool.DECK_PLOTTER.linedUpOn(); // MERIDIANS_AND_PARALLELS
   * }</pre>
   */
  public enum LinedUpOn {
    /** The upright lines of a land map's grid, or the meridians of a chart. */
    GRID_LINES_OR_MERIDIANS,
    /** The meridians or the parallels of a chart. */
    MERIDIANS_AND_PARALLELS,
    /** The compass rose printed on the chart. */
    PRINTED_ROSE
  }

  /**
   * The north that a tool reads from.
   *
   * <pre>{@code
   * boolean yearsChangeIsLeft =
   *     tool.north() == ChartTool.NorthRead.TRUE_OR_MAGNETIC_OF_PRINTED_YEAR;
   * }</pre>
   */
  public enum NorthRead {
    /** True north. */
    TRUE,
    /** Grid north on a land map, true north on a chart. */
    GRID_ON_A_MAP_TRUE_ON_A_CHART,
    /** True north on the outer ring; on the inner ring magnetic north of the rose's year. */
    TRUE_OR_MAGNETIC_OF_PRINTED_YEAR
  }

  /**
   * The transparent plate with a turning capsule that walkers use: its lines are laid along the
   * grid, its edge is short.
   */
  public static final ChartTool BASEPLATE_COMPASS =
      new ChartTool(
          "baseplate compass",
          new StraightEdge(100.0, 0.5),
          LinedUpOn.GRID_LINES_OR_MERIDIANS,
          NorthRead.GRID_ON_A_MAP_TRUE_ON_A_CHART,
          2.0,
          40.0,
          0.0);

  /** A long plate with a rose that turns on it and is laid along a meridian or a parallel. */
  public static final ChartTool TURNING_ROSE_PLOTTER =
      new ChartTool(
          "plotter with a turning rose",
          new StraightEdge(380.0, 0.5),
          LinedUpOn.MERIDIANS_AND_PARALLELS,
          NorthRead.TRUE,
          1.0,
          100.0,
          0.0);

  /**
   * Two rules on links, walked from the leg to the printed rose: outer ring true, inner ring
   * magnetic for its printed year, so that only the years' change is left to apply.
   */
  public static final ChartTool PARALLEL_RULES =
      new ChartTool(
          "parallel rules",
          new StraightEdge(380.0, 0.5),
          LinedUpOn.PRINTED_ROSE,
          NorthRead.TRUE_OR_MAGNETIC_OF_PRINTED_YEAR,
          1.0,
          100.0,
          0.5);

  /** A small flexible sheet for use on deck, laid by eye along a meridian or a parallel. */
  public static final ChartTool DECK_PLOTTER =
      new ChartTool(
          "flexible deck plotter",
          new StraightEdge(150.0, 1.0),
          LinedUpOn.MERIDIANS_AND_PARALLELS,
          NorthRead.TRUE,
          2.0,
          80.0,
          0.0);

  private final String name;
  private final StraightEdge edge;
  private final LinedUpOn linedUpOn;
  private final NorthRead north;
  private final double graduationDegrees;
  private final double referenceMillimetres;
  private final double carryingDegrees;

  private ChartTool(
      String name,
      StraightEdge edge,
      LinedUpOn linedUpOn,
      NorthRead north,
      double graduationDegrees,
      double referenceMillimetres,
      double carryingDegrees) {
    this.name = name;
    this.edge = edge;
    this.linedUpOn = linedUpOn;
    this.north = north;
    this.graduationDegrees = graduationDegrees;
    this.referenceMillimetres = referenceMillimetres;
    this.carryingDegrees = carryingDegrees;
  }

  /**
   * The four tools of the table.
   *
   * @return baseplate compass, turning-rose plotter, parallel rules, deck plotter; unmodifiable
   */
  public static List<ChartTool> all() {
    return List.of(BASEPLATE_COMPASS, TURNING_ROSE_PLOTTER, PARALLEL_RULES, DECK_PLOTTER);
  }

  /**
   * What the tool is called.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * The edge that is laid along the leg.
   *
   * @return length and alignment error
   */
  public StraightEdge edge() {
    return edge;
  }

  /**
   * What it is lined up on.
   *
   * @return its reference
   */
  public LinedUpOn linedUpOn() {
    return linedUpOn;
  }

  /**
   * The north it reads from.
   *
   * @return which bearings it gives
   */
  public NorthRead north() {
    return north;
  }

  /**
   * How finely it is graduated.
   *
   * @return degrees between two marks
   */
  public double graduationDegrees() {
    return graduationDegrees;
  }

  /**
   * The length over which it is held against its reference.
   *
   * @return millimetres
   */
  public double referenceMillimetres() {
    return referenceMillimetres;
  }

  /**
   * The error of carrying the direction from the leg to the reference, as by rules that slip.
   *
   * @return standard deviation, degrees
   */
  public double carryingDegrees() {
    return carryingDegrees;
  }

  /**
   * The same tool with another edge or a steadier hand.
   *
   * @param newEdge length and alignment error
   * @return a changed copy
   */
  public ChartTool withEdge(StraightEdge newEdge) {
    return new ChartTool(
        name, newEdge, linedUpOn, north, graduationDegrees, referenceMillimetres, carryingDegrees);
  }

  /**
   * The same tool with another graduation.
   *
   * @param degrees degrees between two marks, in (0, 90]
   * @return a changed copy
   * @throws IllegalArgumentException if the number is NaN or out of range
   */
  public ChartTool withGraduation(double degrees) {
    Arguments.positive(degrees, "graduation", "degrees");
    return new ChartTool(
        name,
        edge,
        linedUpOn,
        north,
        Arguments.within(degrees, 0.0, 90.0, "graduation", "degrees"),
        referenceMillimetres,
        carryingDegrees);
  }

  /**
   * The same tool with a longer or shorter line to lay along its reference.
   *
   * @param millimetres length held against the reference, millimetres, above 0
   * @return a changed copy
   * @throws IllegalArgumentException if the length is NaN, infinite or not above 0
   */
  public ChartTool withReference(double millimetres) {
    return new ChartTool(
        name,
        edge,
        linedUpOn,
        north,
        graduationDegrees,
        Arguments.positive(millimetres, "length held against the reference", "millimetres"),
        carryingDegrees);
  }

  /**
   * The same tool with another error of carrying.
   *
   * @param degrees standard deviation, degrees, in [0, 90]
   * @return a changed copy
   * @throws IllegalArgumentException if the number is NaN or out of range
   */
  public ChartTool withCarrying(double degrees) {
    return new ChartTool(
        name,
        edge,
        linedUpOn,
        north,
        graduationDegrees,
        referenceMillimetres,
        Arguments.within(degrees, 0.0, 90.0, "loss in carrying", "degrees"));
  }

  /**
   * The error this tool leaves in the bearing of a drawn leg.
   *
   * @param legMillimetres length of the drawn leg, millimetres, above 0
   * @return standard deviation of the bearing, degrees: the root of the sum of the squares of the
   *     four parts
   * @throws IllegalArgumentException if the length is NaN, infinite or not above 0
   */
  public double typicalErrorDegrees(double legMillimetres) {
    double alongLeg = edge.bearingErrorDegrees(legMillimetres);
    double reference =
        Math.toDegrees(Math.atan(BOTH_ENDS * edge.alignmentMillimetres() / referenceMillimetres));
    double reading = graduationDegrees / EVEN_SPREAD;
    return Math.sqrt(
        alongLeg * alongLeg
            + reference * reference
            + reading * reading
            + carryingDegrees * carryingDegrees);
  }

  /**
   * Applies the years' change to a bearing read on the inner ring of a printed rose.
   *
   * @param onInnerRing magnetic bearing of the rose's year
   * @param printed variation the rose prints for its year
   * @param now variation at the date of use
   * @return the same direction from today's magnetic north
   */
  public static MagneticBearing applyYearsChange(
      MagneticBearing onInnerRing, Variation printed, Variation now) {
    return now.toMagnetic(printed.toTrue(onInnerRing));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ChartTool that
        && name.equals(that.name)
        && edge.equals(that.edge)
        && linedUpOn == that.linedUpOn
        && north == that.north
        && graduationDegrees == that.graduationDegrees
        && referenceMillimetres == that.referenceMillimetres
        && carryingDegrees == that.carryingDegrees;
  }

  @Override
  public int hashCode() {
    return 31 * name.hashCode() + edge.hashCode();
  }

  /** The name. */
  @Override
  public String toString() {
    return name;
  }
}
