/**
 * How much rhumb lines and geodesics differ, and what other errors of chart work and steering add
 * in comparison: drawn by the thousand from a seed, told as tables, pictures and a short report.
 *
 * <pre>{@code
 * LegStudy study = LegStudy.ofSeed(1).withLegs(20_000);
 * study.writeTo(Path.of("study")); // report.md, *.csv, *.svg, *.png
 * }</pre>
 */
@NullMarked
package org.ferryglide.examples.study;

import org.jspecify.annotations.NullMarked;
