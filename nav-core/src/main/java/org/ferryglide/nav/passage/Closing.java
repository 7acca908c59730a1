package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;

/** What closes a danger. */
sealed interface Closing extends Serializable {

  String words();

  record During(List<TimeSpan> spans) implements Closing {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "at stated times";
    }
  }

  record AboveStream(Speed rate) implements Closing {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "in streams above " + rate.inKnots(1);
    }
  }

  record AboveWind(Speed speed) implements Closing {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "in winds above " + speed.inKnots(0);
    }
  }

  record Level(String port, double metres, boolean above) implements Closing {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "with the water " + (above ? "above " : "below ") + metres + " m at " + port;
    }
  }
}
