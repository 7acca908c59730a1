package org.ferryglide.nav.passage;

import java.util.Map;
import java.util.Objects;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Verdict;

/**
 * Daylight from the launch until the slower party has landed. The sun counts, not twilight, unless
 * the party has asked for it: civil twilight is a reserve for what goes wrong.
 */
final class DaylightCheck extends PassageCheck {
  private static final double HALF_A_DAY_SECONDS = 12.0 * 3600.0;

  private static final double PAST_SUNRISE_SECONDS = 1.0;

  private static final String LEFT = " left when the slower party has landed";
  private static final String BEFORE = " before the launch";
  private static final int NAME = 0;
  private static final int BEGINS = 1;
  private static final Map<SunThreshold, String[]> WORDS =
      Map.of(
          SunThreshold.SUNRISE_AND_SUNSET,
          new String[] {"daylight", "sunrise"},
          SunThreshold.CIVIL_TWILIGHT,
          new String[] {"civil twilight", "civil dawn"},
          SunThreshold.NAUTICAL_TWILIGHT,
          new String[] {"nautical twilight", "nautical dawn"});

  private final Note left;
  private final Note before;
  private final Daylights atStart;
  private final Daylights atEnd;

  DaylightCheck(Passage passage, SunThreshold light) {
    super(light(words(light), ""), passage);
    left = light(words(light), LEFT);
    before = light(words(light), BEFORE);
    int last = passage.wayPoints().size() - 1;
    atStart = passage.daylights().at(passage.wayPoints().get(0).position(), light);
    atEnd = passage.daylights().at(passage.wayPoints().get(last).position(), light);
  }

  /** What is left of a light, or what is to begin: {@code check.daylight}, {@code -left}. */
  private static Note light(String[] words, String after) {
    boolean left = after.equals(LEFT);
    String name = words[after.equals(BEFORE) ? BEGINS : NAME];
    String code = "check." + name.replace(' ', '-');
    return Note.information(left ? code + "-left" : code, name + after);
  }

  private static String[] words(SunThreshold light) {
    return Objects.requireNonNull(WORDS.get(light), "words");
  }

  @Override
  Verdict check(Candidate candidate) {
    double[] slower = candidate.slowerTimes();
    return slower.length > 0
        ? held(candidate, slower[slower.length - 1])
        : notThere(about(), candidate);
  }

  /** What cannot be checked, since the slower party does not arrive. */
  static Verdict notThere(Note about, Candidate candidate) {
    Note because = candidate.slower().why().map(NotPossible::note).orElse(Findings.NOT_POSSIBLE);
    return Verdict.notChecked(
        about,
        Note.information(
                "why.slower-not-there", "the slower party does not get there: " + because.text())
            .with("because", because));
  }

  private Verdict held(Candidate candidate, double arrival) {
    Party party = passage().party();
    double launch = EpochSeconds.of(candidate.route.departure()) - Seconds.of(party.launching());
    double landed = arrival + Seconds.of(party.landing());
    double atLaunch = atStart.leftAt(launch);
    double light = atEndSince(launch, landed - launch, atLaunch);
    double rest = light - (landed - launch);
    if (Double.isNaN(atLaunch) || Double.isNaN(rest)) {
      return Verdict.notChecked(about(), Findings.NO_SUN);
    }
    PassageLimits limits = passage().limits();
    boolean dark = atLaunch < 0.0;
    return Verdict.of(
            dark ? before : left,
            (dark ? Math.min(atLaunch, rest) : rest) / 60.0,
            "minutes",
            limits.warning(PassageLimits.DAYLIGHT) / 60.0,
            limits.stop(PassageLimits.DAYLIGHT) / 60.0)
        .at(dark ? EpochSeconds.toInstant(launch) : EpochSeconds.toInstant(landed))
        .at(
            dark
                ? passage().wayPoints().get(0).position()
                : passage().wayPoints().get(passage().wayPoints().size() - 1).position());
  }

  /** Seconds from the launch to the sunset at the landing that ends the day of the launch. */
  private double atEndSince(double launch, double length, double atLaunch) {
    double left = atEnd.leftFor(launch, length);
    if (!(left < 0.0)) {
      return left;
    }
    // it is dark at the landing: the sun rises there later, on the day that is meant where it is
    // dark at the start too, or where that day ends at about the same time at both
    double day = -left + Math.max(0.0, atEnd.leftAt(launch - left + PAST_SUNRISE_SECONDS));
    return atLaunch < 0.0 || Math.abs(day - atLaunch) < HALF_A_DAY_SECONDS ? day : left;
  }
}
