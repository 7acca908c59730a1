/**
 * Navigation for sea kayakers: from a leg on the chart to a heading on the deck compass.
 *
 * <p>Start with {@link org.ferryglide.nav.bearing}, where each north has its own type, and {@link
 * org.ferryglide.nav.position}. Official charts, tables, forecasts and the advice of the coastguard
 * come before anything computed here.
 *
 * <p>The <a href="org/ferryglide/nav/teach/doc-files/handbook.html">handbook</a> tells how each
 * thing is worked, by hand and in code.
 */
// GeographicLib-Java and Commons Math have no descriptors; nav-tide is compiled after this module
@SuppressWarnings({"requires-automatic", "module"})
module org.ferryglide.nav {
  requires static org.jspecify;
  requires org.shredzone.commons.suncalc;
  requires GeographicLib.Java;
  requires commons.math3;

  exports org.ferryglide.nav.basics to
      org.ferryglide.tide;
  exports org.ferryglide.nav.reading to
      org.ferryglide.tide;
  exports org.ferryglide.nav.note;
  exports org.ferryglide.nav.bearing;
  exports org.ferryglide.nav.measure;
  exports org.ferryglide.nav.position;
  exports org.ferryglide.nav.sky;
  exports org.ferryglide.nav.geodesy;
  exports org.ferryglide.nav.chart;
  exports org.ferryglide.nav.grid;
  exports org.ferryglide.nav.magnetic;
  exports org.ferryglide.nav.water;
  exports org.ferryglide.nav.steer;
  exports org.ferryglide.nav.timing;
  exports org.ferryglide.nav.reckon;
  exports org.ferryglide.nav.fix;
  exports org.ferryglide.nav.sight;
  exports org.ferryglide.nav.landfall;
  exports org.ferryglide.nav.passage;
  exports org.ferryglide.nav.teach;
}
