package org.ferryglide.nav.note;

import java.io.Serializable;

/**
 * Why there is no answer: which condition fails, in plain English. Each package that solves
 * something has its own, with the figures that belong to it.
 *
 * <pre>{@code
 * Why why = outcome.why().get();
 * String line = why.message(); // the stream across the track is too strong to hold against
 * }</pre>
 */
public interface Why extends Serializable {

  /**
   * The finding as plain English.
   *
   * @return one line without a full stop
   */
  String message();
}
