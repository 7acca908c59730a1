package org.ferryglide.nav.quickest;

import org.ferryglide.nav.water.StreamField;

/** A craft of one speed in a stream, in calm air. */
record CalmCraft(StreamField stream, double calmSpeed) implements CraftMotion {
  @Override
  public boolean flow(double latitude, double longitude, double time, double[] flow) {
    flow[2] = 0.0;
    flow[3] = 0.0;
    return stream.sample(latitude, Math.IEEEremainder(longitude, 360.0), time, flow, 0);
  }

  @Override
  public void throughWater(double heading, double[] flow, double[] eastNorth) {
    eastNorth[0] = calmSpeed * Math.sin(heading);
    eastNorth[1] = calmSpeed * Math.cos(heading);
  }

  @Override
  public boolean isWindless() {
    return true;
  }

  @Override
  public boolean isUniform() {
    return stream.isUniform();
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    return stream.nextBreakAfter(epochSeconds);
  }
}
