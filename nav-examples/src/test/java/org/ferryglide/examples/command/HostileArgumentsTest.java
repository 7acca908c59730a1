package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Every argument of every verb, in its turn, is something that nobody means: the verb answers or
 * refuses in one line, and never calls it a fault of its own.
 */
class HostileArgumentsTest {
  private static final List<String> VALUES =
      List.of(
          "",
          "-",
          "NaN",
          "-Infinity",
          "1e400",
          "-1",
          "0",
          "2147483648",
          "0x1p3",
          "1,5",
          "\u0661\u0662",
          "90N 0E",
          "90S,180W",
          "9999-12-31",
          "2026-02-29",
          "2026-06-14T24:00+19:00",
          "1900-01-01T00:00-18:00",
          "1e308 kn",
          "=1+1",
          "@/etc/passwd",
          "a\nb\u001b[2J%n%s",
          "\u0000",
          "x".repeat(10_000),
          "/dev/null",
          "scenarios/ollen-skerries");

  /** What is written to is left as it is. */
  private static final Set<String> WRITES =
      Set.of("--out", "--gpx", "--geojson", "--page", "--sheet", "--shore", "--ics", "--answers");

  /** In the gate an argument meets every so manieth value. */
  private static final int EVERY = 6;

  @TempDir private static Path temporary;

  @TestFactory
  Stream<DynamicTest> everyArgumentOfEveryVerbMayBeAnything() {
    return Verbs.NAMES.stream()
        .filter(name -> !name.equals("completion"))
        .map(name -> DynamicTest.dynamicTest(name, () -> attack(name)));
  }

  private static void attack(String name) {
    int turn = name.length(); // so that verbs meet different values
    CommandLine line = new CommandLine(Verbs.named(name));
    String[] footer = line.getCommandSpec().usageMessage().footer();
    for (String example :
        Arrays.stream(footer)
            .map(String::trim)
            .filter(it -> it.startsWith("ferryglide "))
            .toList()) {
      List<String> words =
          Ran.words(example.substring("ferryglide ".length()).replace("nav-examples/", ""));
      for (int at = 1; at < words.size(); at++) {
        boolean isFile = WRITES.contains(words.get(at - 1)) || isFolderToWrite(name, at);
        if (!words.get(at).startsWith("--") && !isFile) {
          for (String value : some(turn++)) {
            List<String> changed = new ArrayList<>(words);
            if (!changed.set(at, value).equals(value)) { // the example itself has its own test
              isAnswered(changed);
            }
          }
        }
      }
      for (OptionSpec option : line.getCommandSpec().options()) {
        if (!words.contains(option.longestName())
            && option.arity().max() > 0
            && !WRITES.contains(option.longestName())) {
          for (String value : some(turn++)) {
            List<String> more = new ArrayList<>(words);
            more.add(option.longestName());
            more.add(value);
            isAnswered(more);
          }
        }
      }
    }
  }

  /** Some of the values, others each time; every one of them in the thorough edition. */
  private static List<String> some(int turn) {
    if (Seeds.MORE_IN_THE_SOAK > 1) {
      return VALUES;
    }
    List<String> some = new ArrayList<>();
    for (int i = turn % EVERY; i < VALUES.size(); i += EVERY) {
      some.add(VALUES.get(i));
    }
    return some;
  }

  private static boolean isFolderToWrite(String verb, int at) {
    return at == 1 && (verb.equals("begin") || verb.equals("study"));
  }

  private static void isAnswered(List<String> words) {
    List<String> own = new ArrayList<>(words);
    own.replaceAll(it -> it.startsWith("target/") ? temporary.resolve(it).toString() : it);
    Ran ran = Ran.of(own.toArray(new String[0]));
    String told =
        (words + " -> " + ran.status() + ": " + ran.err()).replaceAll("[\\p{Cntrl}&&[^\n]]", "?");
    assertNotEquals(Status.OUR_FAULT.code(), ran.status(), told);
    assertFalse(ran.err().contains("\tat ") || ran.err().contains("Exception"), told);
    assertFalse(ran.err().contains("\u001b"), told);
    if (ran.status() == Status.REFUSED.code() && !words.get(0).equals("batch")) {
      assertTrue(
          ran.err().lines().count() == 1
              || ran.err().lines().allMatch(it -> it.contains(", line ") || it.contains(": ")),
          told);
      assertEquals("", ran.out(), told);
    }
  }

  /** What a verb throws from the midst of its work is no refusal of what was typed. */
  @Command(name = "broken")
  static final class Broken extends Verb {
    @Override
    protected Answer answer() {
      throw new IllegalArgumentException("a bound of our own\nis passed");
    }
  }

  @Test
  void aFaultOfOursIsNoRefusal() {
    java.io.StringWriter err = new java.io.StringWriter();
    Refusals refusals = new Refusals();
    int status =
        new CommandLine(new Broken())
            .setErr(new java.io.PrintWriter(err))
            .setExecutionExceptionHandler(refusals)
            .execute();
    assertEquals(Status.OUR_FAULT.code(), status);
    assertTrue(err.toString().startsWith("ferryglide: a fault of ours"), err.toString());
    assertEquals(1, err.toString().lines().count(), err.toString());
  }
}
