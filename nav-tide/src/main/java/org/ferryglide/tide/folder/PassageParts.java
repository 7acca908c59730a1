package org.ferryglide.tide.folder;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the files that a folder may leave out.
 *
 * @param places what is told of way points, by name, without their positions
 * @param legs how legs are paddled, by number
 * @param party the party and the day
 * @param margins the limits for the checks; null without a file
 * @param dangers what to keep away from; null if nobody looked
 * @param lanes lanes and fairways; null if nobody looked
 * @param coast lines of the shore; none without a file
 * @param refuges landings beside the way
 * @param wind the forecast; null without one
 * @param deviation the deviation of the compass on deck; null without a table
 * @param errors how wrong reckoning may be; the usual without a file
 */
@SuppressWarnings("serial") // lists and maps of the readers are serializable
record PassageParts(
    Map<String, WayPoint> places,
    Map<Integer, LegSheet> legs,
    PartySheet party,
    @Nullable PassageLimits margins,
    @Nullable List<Danger> dangers,
    @Nullable List<Lane> lanes,
    List<List<Position>> coast,
    List<WayPoint> refuges,
    @Nullable ForecastWind wind,
    @Nullable DeviationTable deviation,
    ErrorModel errors)
    implements Serializable {
  private static final long serialVersionUID = 1L;
}
