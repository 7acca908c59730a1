package org.ferryglide.examples.command;

import java.io.IOException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideTable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** When there is water enough over a bar or a ledge. */
@Command(
    name = "windows",
    description = "When there is water enough over a spot, from a tide table.",
    footer = {
      "",
      "Example:",
      "  ferryglide windows nav-examples/scenarios/ollen-skerries/tides/dunlathe.csv --drying 1.2"
          + " --depth 0.5 --working"
    })
final class WindowsVerb extends TableVerb {
  @Option(
      names = "--drying",
      paramLabel = "METRES",
      description = "Drying height of the spot above the table's datum.")
  private @Nullable Double drying;

  @Option(
      names = "--sounding",
      paramLabel = "METRES",
      description = "Charted depth of the spot below the table's datum.")
  private @Nullable Double sounding;

  @Option(
      names = "--depth",
      required = true,
      paramLabel = "METRES",
      description = "Depth of water wanted.")
  private double depth;

  @Option(
      names = "--margin",
      defaultValue = "0",
      paramLabel = "METRES",
      description = "Extra water for weather and swell (none if left out).")
  private double margin;

  @Mixin private WorkingOption working = new WorkingOption();

  @Override
  protected Answer answer() throws IOException {
    TideTable table = read();
    ChartedDepth spot = spot(table);
    double needed =
        InputRefused.given(
            () -> spot.tideNeeded(Distance.ofMetres(depth), Distance.ofMetres(margin)).metres());
    Found<Window> found =
        InputRefused.given(
            () ->
                TableCurve.cosine(table)
                    .windowsOver(
                        spot,
                        Distance.ofMetres(depth),
                        Distance.ofMetres(margin),
                        from(table),
                        until(table)));
    Answer answer =
        new Answer()
            .row("port", table.port())
            .row("needed", Math.ceil(needed * 100.0) / 100.0 + " m above " + table.datum())
            .value("tideNeededMetres", needed);
    windows(answer, found);
    working.adding(
        answer, it -> it.working(ByHand.depth(table, spot.belowDatum().metres()).working()));
    return answer;
  }

  private ChartedDepth spot(TideTable table) {
    if ((drying == null) == (sounding == null)) {
      throw new InputRefused("one of --drying and --sounding is needed");
    }
    return InputRefused.given(
        () ->
            drying != null
                ? ChartedDepth.ofDryingHeight(Distance.ofMetres(drying), table.datum())
                : ChartedDepth.ofSounding(
                    Distance.ofMetres(Objects.requireNonNull(sounding)), table.datum()));
  }

  /** The windows; none from missing data is not the same as none. */
  private void windows(Answer answer, Found<Window> found) {
    List<Object> values = new ArrayList<>();
    for (Window window : found) {
      answer.row("window", Times.inside(window.span(), offset()));
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("from", window.from().toString());
      value.put("until", window.until().toString());
      values.add(value);
    }
    answer.value("windows", values).value("whole", found.isWhole());
    found.unseen().forEach(span -> answer.row("no data", Times.inside(span, offset())));
    if (found.isEmpty()) {
      answer
          .row("windows", found.isWhole() ? "none" : "none known")
          .status(found.isWhole() ? Status.NOT_POSSIBLE : Status.DATA_MISSING);
    }
    answer.row("clock", offset().equals(ZoneOffset.UTC) ? "UTC" : "UTC" + offset());
    answer.notes(found.notes());
  }
}
