package org.ferryglide.examples;

/** The main job; under construction. */
public final class LayOff {
  private LayOff() {}

  /**
   * Runs the main job.
   *
   * @param args the scenario folder
   */
  public static void main(String[] args) {
    System.out.println("under construction");
  }
}
