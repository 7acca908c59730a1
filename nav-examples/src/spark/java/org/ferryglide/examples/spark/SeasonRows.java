package org.ferryglide.examples.spark;

import java.util.List;
import org.ferryglide.examples.study.CoastSeason;

/**
 * The departures of a season.
 *
 * @param season the season
 */
record SeasonRows(CoastSeason season) implements NumberedRows {
  private static final long serialVersionUID = 1L;

  @Override
  public List<String> columns() {
    return List.of("station", "departure_s", "hours", "cross_stream_share", "reserve_kn");
  }

  @Override
  public long count() {
    return season.departures();
  }

  @Override
  public int atATime() {
    return 100;
  }

  @Override
  public Worker worker() {
    CoastSeason.Worker worker = season.worker();
    return (first, rows, out) -> {
      for (int i = 0; i < rows; i++) {
        worker.work(first + i, out, CoastSeason.WIDTH * i);
      }
    };
  }
}
