package org.ferryglide.nav.water;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.Note;

/**
 * How a stream, a wind or a height at a place and time came about.
 *
 * <pre>{@code
 * for (Explanation.Source source : field.explain(position, instant).sources()) {
 *   System.out.println(source.name() + ": " + source.weight());
 * }
 * }</pre>
 *
 * @param sources the tables or stations that took part, with their weights
 * @param notes what the reader should know: interpolated, extrapolated, floored, rough rule
 */
public record Explanation(List<Source> sources, List<Note> notes) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Nothing to explain: no sources, no notes. */
  public static final Explanation NONE = new Explanation(List.of(), List.of());

  /**
   * Takes both lists, copied.
   *
   * @param sources the tables or stations that took part
   * @param notes what the reader should know
   */
  public Explanation {
    sources = List.copyOf(sources);
    notes = List.copyOf(notes);
  }

  /**
   * A table or station that took part in an answer.
   *
   * <pre>{@code
   * new Explanation.Source("Skarra Sound", 0.7);
   * }</pre>
   *
   * @param name the table's or station's name
   * @param weight its share of the answer, in [0, 1]
   */
  public record Source(String name, double weight) implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Takes both parts.
     *
     * @param name the table's or station's name
     * @param weight its share of the answer, in [0, 1]
     * @throws IllegalArgumentException if the weight is NaN or out of range
     */
    public Source {
      Objects.requireNonNull(name, "name");
      weight = Arguments.within(weight, 0.0, 1.0, "weight of a source", "of the answer");
    }
  }
}
