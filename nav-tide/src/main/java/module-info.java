/**
 * Tides for sea kayakers: heights from tables, curves, secondary ports and harmonic constants, and
 * tidal streams as functions of place and time.
 *
 * <p>Official tables come first; what is computed here says how sure it is.
 */
@SuppressWarnings("requires-automatic") // Commons Math and FastCSV have no descriptors
module org.ferryglide.tide {
  requires transitive org.ferryglide.nav;
  requires commons.math3;
  requires de.siegmar.fastcsv;
  requires static org.jspecify;

  exports org.ferryglide.tide.folder;
  exports org.ferryglide.tide.height;
  exports org.ferryglide.tide.harmonic;
  exports org.ferryglide.tide.stream;
  exports org.ferryglide.tide.teach;
}
