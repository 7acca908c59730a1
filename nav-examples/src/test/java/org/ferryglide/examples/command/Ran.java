package org.ferryglide.examples.command;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a run of the command gave.
 *
 * @param status its exit status
 * @param out what it printed
 * @param err what it said on the error stream
 */
record Ran(int status, String out, String err) {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  static Ran of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    InputStream own = System.in; // the test runner's line to its parent: no verb may read it
    System.setIn(InputStream.nullInputStream());
    int status;
    try {
      status = Ferryglide.run(args, new PrintWriter(out), new PrintWriter(err));
    } finally {
      System.setIn(own);
    }
    return new Ran(status, out.toString(), err.toString());
  }

  /** Runs a line as a shell would: words separated by blanks, double quotes hold them together. */
  static Ran line(String line) {
    return of(words(line).toArray(new String[0]));
  }

  static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    return words;
  }
}
