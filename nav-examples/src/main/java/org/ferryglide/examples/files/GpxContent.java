package org.ferryglide.examples.files;

import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * What a GPX file holds of use to a paddler.
 *
 * <pre>{@code
 * GpxContent content = GpxFile.read(Path.of("route.gpx"));
 * content.routes().get(0).points().forEach(point -> System.out.println(point.name()));
 * }</pre>
 *
 * @param wayPoints single way points
 * @param routes routes, each a list of points still to be passed
 * @param tracks tracks, each segment of a track on its own: where somebody was
 */
@SuppressWarnings("serial") // List.copyOf
public record GpxContent(List<Point> wayPoints, List<Line> routes, List<Line> tracks)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Keeps copies of the lists. */
  public GpxContent {
    wayPoints = List.copyOf(wayPoints);
    routes = List.copyOf(routes);
    tracks = List.copyOf(tracks);
  }

  /**
   * A point with what the file says of it.
   *
   * @param name its name; empty if it has none
   * @param position where it is
   * @param timeOrNull when somebody was there; null if the file does not say
   */
  public record Point(String name, Position position, @Nullable Instant timeOrNull)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * When somebody was there.
     *
     * @return the time; empty if the file does not say
     */
    public Optional<Instant> time() {
      return Optional.ofNullable(timeOrNull);
    }
  }

  /**
   * A named line of points.
   *
   * @param name its name; empty if it has none
   * @param points in order
   */
  @SuppressWarnings("serial") // List.copyOf
  public record Line(String name, List<Point> points) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps a copy of the list. */
    public Line {
      points = List.copyOf(points);
    }
  }
}
