package org.ferryglide.nav.passage;

/** Room for what is known at each look along a way, lent to one candidate after another. */
final class Columns {
  final double[] time;
  final double[] latitude;
  final double[] longitude;
  final double[] heading;
  final double[] streamEast;
  final double[] streamNorth;
  final double[] windEast;
  final double[] windNorth;
  final double[] groundEast;
  final double[] groundNorth;
  final double[] goneLatitude;
  final double[] goneLongitude;
  final double[] seconds;
  final double[] halfWidth;
  final double[] reserve;

  /** Of the way up to each look: what half the width has grown by at most, and sums of the way. */
  final double[] growth;

  final double[] paddledEast;
  final double[] paddledNorth;
  final double[] carriedEast;
  final double[] carriedNorth;
  final double[] elapsed;

  final int[] leg;

  Columns(int looks) {
    time = new double[looks];
    latitude = new double[looks];
    longitude = new double[looks];
    heading = new double[looks];
    streamEast = new double[looks];
    streamNorth = new double[looks];
    windEast = new double[looks];
    windNorth = new double[looks];
    groundEast = new double[looks];
    groundNorth = new double[looks];
    goneLatitude = new double[looks];
    goneLongitude = new double[looks];
    seconds = new double[looks];
    halfWidth = new double[looks];
    reserve = new double[looks];
    growth = new double[looks];
    paddledEast = new double[looks];
    paddledNorth = new double[looks];
    carriedEast = new double[looks];
    carriedNorth = new double[looks];
    elapsed = new double[looks];
    leg = new int[looks];
  }

  boolean isEnoughFor(int looks) {
    return time.length >= looks;
  }
}
