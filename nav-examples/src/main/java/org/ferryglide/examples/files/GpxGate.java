package org.ferryglide.examples.files;

import java.io.ByteArrayInputStream;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.jspecify.annotations.Nullable;

/**
 * Looks through a GPX file before a library reads it: bounds its size, refuses document types (and
 * with them entities), and what a lenient reader would drop or take amiss without a word.
 *
 * <p>Ranges and types are those of the GPX 1.1 schema: latitudes in [-90, 90], longitudes in [-180,
 * 180), decimal numbers; that a time without zone is refused is stricter than the schema, whose
 * text means UTC, while receivers and people write local time.
 *
 * @see <a href="https://www.topografix.com/GPX/1/1/">GPX 1.1 schema documentation</a>
 */
final class GpxGate {
  /** A fortnight of a receiver's points, one a second, takes less. */
  static final int MOST_BYTES = 64_000_000;

  static final int MOST_POINTS = 500_000;
  private static final int DEEPEST = 64;
  private static final int MOST_PROBLEMS = 100;
  private static final String NAMESPACE = "http://www.topografix.com/GPX/1/1";
  private static final Set<String> POINTS = Set.of("wpt", "rtept", "trkpt");
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?(\\d{1,3}(\\.\\d{0,30})?|\\.\\d{1,30})");

  private final String source;
  private final XMLStreamReader xml;
  private final List<InputProblem> problems = new ArrayList<>();
  private int depth;
  private int points;

  private GpxGate(String source, XMLStreamReader xml) {
    this.source = source;
    this.xml = xml;
  }

  /** The number of points of a sound file. */
  static int pass(String source, byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      throw new InputFormatException(
          new InputProblem(
              source, 0, 0, "must hold at most " + MOST_BYTES + " bytes, but has " + bytes.length));
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(bytes));
      GpxGate gate = new GpxGate(source, xml);
      try {
        gate.look();
      } catch (XMLStreamException e) {
        gate.problem(e.getLocation().getLineNumber(), e.getLocation().getColumnNumber(), broken(e));
      } finally {
        xml.close();
      }
      if (!gate.problems.isEmpty()) {
        throw new InputFormatException(gate.problems);
      }
      return gate.points;
    } catch (XMLStreamException e) {
      throw new InputFormatException(new InputProblem(source, 1, 1, broken(e)));
    }
  }

  private static String broken(XMLStreamException e) {
    String message = e.getMessage();
    String reason = message == null ? "" : message.replaceAll("(?s).*Message: ", "");
    return "is not sound XML: " + reason.replaceAll("\\s+", " ");
  }

  private void look() throws XMLStreamException {
    String element = "";
    while (xml.hasNext() && problems.size() < MOST_PROBLEMS) {
      switch (xml.next()) {
        case XMLStreamConstants.DTD -> {
          problem("must hold no document type and no entities of its own");
          return;
        }
        case XMLStreamConstants.START_ELEMENT -> {
          element = xml.getLocalName();
          depth++;
          if (!started(element)) {
            return;
          }
        }
        case XMLStreamConstants.CHARACTERS -> {
          if (element.equals("time")
              && NAMESPACE.equals(xml.getNamespaceContext().getNamespaceURI(""))) {
            time(xml.getText().trim());
          }
        }
        case XMLStreamConstants.END_ELEMENT -> {
          element = "";
          depth--;
        }
        default -> {}
      }
    }
  }

  /** False where it makes no sense to look on. */
  private boolean started(String element) {
    if (depth == 1 && !root(element)) {
      return false;
    }
    if (depth > DEEPEST) {
      problem("must be at most " + DEEPEST + " elements deep");
      return false;
    }
    if (POINTS.contains(element) && NAMESPACE.equals(xml.getNamespaceURI())) {
      points++;
      if (points > MOST_POINTS) {
        problem("must hold at most " + MOST_POINTS + " points");
        return false;
      }
      coordinate("lat", 90.0, true);
      coordinate("lon", 180.0, false);
    }
    return true;
  }

  private boolean root(String element) {
    if (!element.equals("gpx") || !NAMESPACE.equals(xml.getNamespaceURI())) {
      problem(
          "must begin with <gpx xmlns=\"" + NAMESPACE + "\">, but begins with <" + element + ">");
      return false;
    }
    String version = xml.getAttributeValue(null, "version");
    if (!"1.1".equals(version)) {
      problem("version must be \"1.1\", but was " + quoted(version));
      return false;
    }
    if (xml.getAttributeValue(null, "creator") == null) {
      problem("<gpx> must have a creator");
    }
    return true;
  }

  private void coordinate(String name, double most, boolean closed) {
    String text = xml.getAttributeValue(null, name);
    String allowed =
        "must be a decimal number in [-" + (int) most + ", " + (int) most + (closed ? "]" : ")");
    if (text == null) {
      problem(name + " is missing; it " + allowed);
      return;
    }
    String trimmed = text.trim();
    double degrees = DECIMAL.matcher(trimmed).matches() ? Double.parseDouble(trimmed) : Double.NaN;
    if (!(degrees >= -most && (closed ? degrees <= most : degrees < most))) {
      problem(name + " " + allowed + ", but was " + quoted(text));
    }
  }

  private void time(String text) {
    if (text.isEmpty()) {
      return;
    }
    try {
      OffsetDateTime.parse(text, DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    } catch (DateTimeException e) {
      problem("time must be like 2026-06-14T10:40:00Z, with its zone, but was " + quoted(text));
    }
  }

  private static String quoted(@Nullable String text) {
    if (text == null) {
      return "missing";
    }
    String plain = text.replaceAll("\\p{Cntrl}", "?");
    return '"' + (plain.length() > 40 ? plain.substring(0, 40) + "…" : plain) + '"';
  }

  private void problem(String message) {
    problem(xml.getLocation().getLineNumber(), xml.getLocation().getColumnNumber(), message);
  }

  private void problem(int line, int column, String message) {
    problems.add(new InputProblem(source, Math.max(0, line), Math.max(0, column), message));
  }
}
