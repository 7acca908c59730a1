/**
 * Teaching: the problems of the trade as a chain of figures, with the working as it is done by
 * hand, and with the slips that people make in it.
 *
 * <p>A {@link org.ferryglide.nav.teach.Problem} holds what is given, how each further figure
 * follows, and how it goes wrong. From the one chain come the working (each line rounded as by
 * hand, with the exact value beside it), the answer, and the marking of somebody else's answer: an
 * early slip is carried through the later lines just as the learner carried it.
 *
 * <pre>{@code
 * Problem problem =
 *     BearingProblems.trueToMagnetic(TrueBearing.ofDegrees(45), Variation.ofDegreesWest(4));
 * System.out.println(problem.working());
 * System.out.println(problem.mark(41.0)); // not right: variation with the wrong sign
 * }</pre>
 *
 * <p>A worked problem shows how an answer is found; official charts, tables and forecasts, and
 * trained judgement, come first on the water.
 *
 * <p>The <a href="doc-files/handbook.html">handbook</a> has each subject with its formula, limits,
 * sources and examples, and answers to "how do I".
 */
@NullMarked
package org.ferryglide.nav.teach;

import org.jspecify.annotations.NullMarked;
