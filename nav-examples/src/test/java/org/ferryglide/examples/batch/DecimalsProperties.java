package org.ferryglide.examples.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

/** Numbers in bytes, beside the JDK's own reader and exact decimal arithmetic. */
class DecimalsProperties {
  private static double parse(String text) {
    byte[] bytes = ("x" + text + "y").getBytes(StandardCharsets.UTF_8);
    return Decimals.parse(bytes, 1, bytes.length - 1);
  }

  private static String write(double value, int decimals) {
    byte[] out = new byte[80];
    int end = Decimals.write(value, decimals, out, 3);
    return new String(out, 3, end - 3, StandardCharsets.US_ASCII);
  }

  @Property(seed = Seeds.SEED, tries = 1000)
  void readsWhatTheJdkReads(
      @ForAll @LongRange(min = -999_999_999_999_999_999L, max = 999_999_999_999_999_999L)
          long whole,
      @ForAll @IntRange(max = 30) int point) {
    String text = BigDecimal.valueOf(whole, point).toPlainString();
    assertEquals(Double.parseDouble(text), parse(text), text);
  }

  @Property(seed = Seeds.SEED, tries = 1000)
  void everyDoubleInFullReadsBack(@ForAll double value) {
    assertEquals(value, parse(Double.toString(value)));
  }

  /** Rounding of the scaled value may decide a tie either way: half a unit and an ulp. */
  @Property(seed = Seeds.SEED, tries = 1000)
  void whatIsWrittenIsNearest(
      @ForAll @DoubleRange(min = -1e9, max = 1e9) double value,
      @ForAll @IntRange(max = 12) int decimals) {
    BigDecimal written = new BigDecimal(write(value, decimals));
    assertEquals(decimals, written.scale());
    BigDecimal error = written.subtract(new BigDecimal(value)).abs();
    BigDecimal half = new BigDecimal("0.5").scaleByPowerOfTen(-decimals);
    assertTrue(error.compareTo(half.add(new BigDecimal(Math.ulp(value)))) <= 0, () -> "" + value);
  }

  @Test
  void whatIsNoPlainDecimalNumberIsNone() {
    for (String text :
        new String[] {
          "",
          " ",
          "-",
          "+",
          ".",
          "e5",
          "1e",
          "1e+",
          "1,5",
          "1.2.3",
          "0x10",
          "NaN",
          "Infinity",
          "1f",
          "1d",
          "1 2",
          "--1",
          "1e999",
          "٣",
          "1_000",
          "−5"
        }) {
      assertEquals(Double.NaN, parse(text), text);
    }
  }

  @Test
  void plainFormsAreRead() {
    assertEquals(5.0, parse("5."));
    assertEquals(0.5, parse(".5"));
    assertEquals(-1.25e-7, parse(" -1.25E-7 "));
    assertEquals(7.0, parse("+007"));
    assertEquals(Double.parseDouble("0.1234567890123456789"), parse("0.1234567890123456789"));
    assertEquals(Double.parseDouble("12345678901234567890"), parse("12345678901234567890"));
  }

  @Test
  void writtenFormsAreWhole() {
    assertEquals("0.0000", write(-0.00001, 4));
    assertEquals("-0.0001", write(-0.00005000001, 4));
    assertEquals("1.000000", write(0.9999999, 6));
    assertEquals("100", write(99.9, 0));
    assertEquals("123456789012345.1250", write(Double.parseDouble("123456789012345.125"), 4));
    assertEquals("1.0E300", write(1e300, 4));
    BigDecimal exact = new BigDecimal(2.5e12).setScale(9, RoundingMode.HALF_EVEN);
    assertEquals(exact.toPlainString(), write(2.5e12, 9));
  }
}
