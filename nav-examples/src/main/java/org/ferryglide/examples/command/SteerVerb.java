package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.tide.folder.PassageFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The heading that carries along a leg in a stream. */
@Command(
    name = "steer",
    description = "Course to steer along a leg in a stream, by a constant heading.",
    footer = {
      "",
      "Examples:",
      "  ferryglide steer \"46-11.8N 26-17.6W\" \"46-12.1N 26-13.0W\" --speed 3.5 --set 005 --rate"
          + " 1.7 --working",
      "  ferryglide steer \"46-11.8N 26-17.6W\" \"46-12.1N 26-13.0W\" --speed 3.5 --streams"
          + " nav-examples/scenarios/ollen-skerries --depart 2026-06-14T12:15+01:00"
    })
final class SteerVerb extends Verb {
  /** Three times the fastest known: more is a slip. */
  private static final double FASTEST_STREAM_KNOTS = 50.0;

  private static final double FURTHEST_FROM_THE_EQUATOR = 89.0;

  @Parameters(index = "0", paramLabel = "FROM", description = "Position of the start.")
  private Position from = Position.ofDegrees(0.0, 0.0);

  @Parameters(index = "1", paramLabel = "TO", description = "Position of the end.")
  private Position to = Position.ofDegrees(0.0, 0.0);

  @Option(
      names = "--speed",
      required = true,
      paramLabel = "SPEED",
      description = "Paddling speed; knots where no unit is given.")
  private Speed speed = Speed.ZERO;

  @Option(names = "--set", paramLabel = "DEGREES", description = "Where the stream goes, true.")
  private @Nullable TrueBearing set;

  @Option(names = "--rate", paramLabel = "SPEED", description = "Its rate.")
  private @Nullable Speed rate;

  @Option(
      names = "--streams",
      paramLabel = "FOLDER",
      description = "Streams of a passage's folder.")
  private @Nullable Path streams;

  @Option(
      names = "--depart",
      paramLabel = "TIME",
      description = "When, as 2026-06-14T12:15+01:00; needed with --streams.")
  private @Nullable OffsetDateTime depart;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "Date of the variation for the magnetic heading; that of --depart if left out.")
  private @Nullable LocalDate date;

  @Mixin private WorkingOption working = new WorkingOption();

  @Override
  protected Answer answer() throws IOException {
    RhumbLeg leg = InputRefused.given(() -> RhumbLeg.between(from, to));
    if (Math.max(Math.abs(from.latitudeDegrees()), Math.abs(to.latitudeDegrees()))
        > FURTHEST_FROM_THE_EQUATOR) {
      throw new InputRefused("a leg to steer must lie within 89 degrees of the equator");
    }
    Instant time = depart == null ? Instant.EPOCH : depart.toInstant();
    Craft craft = InputRefused.given(() -> Craft.ofSpeed(speed));
    StreamField field = stream();
    return CourseToSteer.with(craft, field)
        .solve(leg, time)
        .match(
            steered -> worked(steered(leg, steered), leg, field.at(from, time)),
            why -> failed(leg, depart == null ? timeless(why) : why));
  }

  private StreamField stream() throws IOException {
    if (streams != null) {
      if (depart == null) {
        throw new InputRefused("--depart is needed with --streams");
      }
      return PassageFolder.read(streams).passage().stream();
    }
    if (set == null || rate == null) {
      throw new InputRefused("--set and --rate are needed, or --streams");
    }
    if (rate.knots() > FASTEST_STREAM_KNOTS) {
      throw new InputRefused("--rate must be at most 50 kn, but was " + rate);
    }
    TrueBearing goes = set;
    Speed runs = rate;
    return InputRefused.given(() -> StreamField.steady(Velocity.ofSetAndRate(goes, runs)));
  }

  private Answer steered(RhumbLeg leg, SteeredLeg steered) {
    TrueBearing heading = steered.courseToSteer();
    Answer answer =
        course(leg)
            .row("steer", heading.threeDigits() + " true")
            .value("headingTrueDegrees", heading.degrees());
    variation(leg).ifPresent(it -> Magnetic.row(answer, heading, it, "headingMagneticDegrees"));
    answer
        .row("made good", steered.speedMadeGood().inKnots(1))
        .row("time", Times.hoursAndMinutes(steered.duration()))
        .value("speedMadeGoodKnots", steered.speedMadeGood().knots())
        .value("durationSeconds", steered.duration().getSeconds())
        .value("reserveKnots", steered.reserve().knots());
    if (depart != null) {
      ZoneOffset offset = depart.getOffset();
      answer
          .row("arrival", Times.minute(steered.arrival(), offset))
          .value("arrival", steered.arrival().toString());
    }
    return answer.value("possible", true).notes(steered.notes());
  }

  /** Of the date asked for, else of the departure's; empty where there is neither. */
  private Optional<VariationReading> variation(RhumbLeg leg) {
    LocalDate day = date == null && depart != null ? depart.toLocalDate() : date;
    return Optional.ofNullable(day).map(it -> Magnetic.variation(leg.midpoint(), it));
  }

  /** By hand with the stream at the start, which a folder's stream need not keep. */
  private Answer worked(Answer answer, RhumbLeg leg, Optional<Velocity> stream) {
    if (working.isWanted() && stream.isPresent()) {
      Optional<Variation> variation = variation(leg).map(VariationReading::variation);
      InputRefused.given(() -> ByHand.steered(leg, speed, stream.get(), variation))
          .forEach(each -> answer.working(each.working()));
    }
    return answer;
  }

  private static Answer course(RhumbLeg leg) {
    return new Answer()
        .row("course", leg.course().threeDigits() + " true, " + leg.length().inNauticalMiles(2))
        .value("courseTrueDegrees", leg.course().degrees())
        .value("distanceNauticalMiles", leg.length().nauticalMiles());
  }

  /** In a stream that never changes, when it fails says nothing. */
  private static NotPossible timeless(NotPossible why) {
    NotPossible bare = NotPossible.because(why.reason());
    return why.shortBy()
        .map(speed -> why.isShortAllTheWay() ? bare.byAllTheWay(speed) : bare.by(speed))
        .orElse(bare);
  }

  private static Answer failed(RhumbLeg leg, NotPossible why) {
    return course(leg)
        .line((why.isDataMissing() ? "no data: " : "not possible: ") + why.message())
        .value("possible", false)
        .value("reason", why.reason().name())
        .value("message", why.message())
        .value("wantOfData", why.isDataMissing())
        .status(why.isDataMissing() ? Status.DATA_MISSING : Status.NOT_POSSIBLE);
  }
}
