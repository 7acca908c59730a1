package org.ferryglide.tide.folder;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.steer.SteeringLimits;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.stream.Shoreline;
import org.ferryglide.tide.stream.StationField;

/** Puts the passage of a folder together. */
final class PassageMaker {
  /** As the usual share that warns stands to the one that stops. */
  private static final double SHARE_OF_WARNING = 0.625;

  /** A party that lands within this of its latest arrival is warned. Common practice, no source. */
  private static final int WARNING_MINUTES = 30;

  /** From this share of the strongest stream a warning is given. Common practice, no source. */
  private static final double WARNING_SHARE = 0.8;

  private PassageMaker() {}

  static Passage passage(PassageFolder folder, PassageParts parts) {
    ZoneId zone = parts.party().zone() == null ? folder.start().getOffset() : parts.party().zone();
    PassageBuilder builder =
        Passage.builder(folder.name(), zone, parts.party().at(folder.speed()))
            .variation(folder.rose())
            .stream(stream(folder, parts))
            .limits(limits(folder, parts))
            .errors(parts.errors())
            .longestDuration(folder.limits().longestLeg());
    List<PassageFolder.WayPoint> wayPoints = folder.wayPoints();
    builder.from(place(wayPoints.get(0), wayPoints, parts));
    for (int i = 1; i < wayPoints.size(); i++) {
      LegSheet leg = parts.legs().get(i);
      builder.to(
          place(wayPoints.get(i), wayPoints, parts),
          leg == null ? LegOptions.usual() : leg.with(folder.streams()));
    }
    folder.tides().forEach((port, table) -> builder.level(port, TableCurve.cosine(table)));
    parts.refuges().forEach(builder::refuge);
    if (parts.dangers() != null) {
      builder.dangers(parts.dangers());
    }
    if (parts.lanes() != null) {
      builder.lanes(parts.lanes());
    }
    if (!parts.coast().isEmpty()) {
      builder.shores(parts.coast());
    }
    if (parts.wind() != null) {
      builder.wind(parts.wind());
    }
    if (parts.deviation() != null) {
      builder.deviation(parts.deviation());
    }
    if (parts.party().visibility() != null) {
      builder.visibility(parts.party().visibility());
    }
    if (parts.party().swellFrom() != null) {
      builder.swellFrom(parts.party().swellFrom());
    }
    folder
        .limits()
        .latestArrival()
        .map(OffsetDateTime::toInstant)
        .ifPresent(
            latest ->
                builder.condition(
                    Condition.arriveBy(latest.minusSeconds(WARNING_MINUTES * 60L), latest)));
    folder.notes().forEach(builder::note);
    return builder.build();
  }

  /** The nearest station's, never across the coast. */
  private static StationField stream(PassageFolder folder, PassageParts parts) {
    StationField nearest = StationField.nearest(folder.stations(), folder.limits().reach());
    return parts.coast().isEmpty() ? nearest : nearest.withShores(Shoreline.of(parts.coast()));
  }

  /** The limits of the checks; the strongest stream of limits.csv counts unless margins tell. */
  private static PassageLimits limits(PassageFolder folder, PassageParts parts) {
    org.ferryglide.tide.folder.FolderLimits today = folder.limits();
    PassageLimits limits = parts.margins() == null ? fromToday(today) : parts.margins();
    limits = today.light().map(limits::withLight).orElse(limits.withAnyLight());
    double share = today.crossStreamShare();
    double usual = SteeringLimits.USUAL.warnAbove();
    return limits.withCrossStreamShare(usual < share ? usual : SHARE_OF_WARNING * share, share);
  }

  static PassageLimits fromToday(FolderLimits today) {
    PassageLimits limits = PassageLimits.none();
    if (!today.strongestStream().isPresent()) {
      return limits;
    }
    Speed most = today.strongestStream().get();
    return limits.withStream(most.times(WARNING_SHARE), most);
  }

  /** A way point with the mark that it is aimed off for, where there is one. */
  private static WayPoint place(
      PassageFolder.WayPoint wayPoint, List<PassageFolder.WayPoint> all, PassageParts parts) {
    WayPoint place = place(wayPoint, parts);
    for (PassageFolder.WayPoint other : all) {
      if (place.aimedOffFor().filter(mark -> mark.name().equals(other.name())).isPresent()) {
        return place.aimedOffFor(place(other, parts));
      }
    }
    return place;
  }

  private static WayPoint place(PassageFolder.WayPoint wayPoint, PassageParts parts) {
    WayPoint told = parts.places().get(wayPoint.name());
    return (told == null ? WayPoint.of(wayPoint.name(), wayPoint.position()) : told)
        .at(wayPoint.position());
  }
}
