/**
 * How far, how fast, and which way the water or the air goes.
 *
 * <p>{@link Distance} is held in metres and {@link Speed} in metres a second; every other unit is
 * named where it goes in or comes out. A nautical mile is 1852 m exactly and is written NM; a bare
 * "mile" is refused, because at sea and on land it means different lengths.
 *
 * <p>{@link Velocity} is the motion of water or air: a stream is made of its set and rate, a wind
 * of its speed and where it comes from.
 *
 * <pre>{@code
 * Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(180), Speed.ofKnots(1.2));
 * Velocity wind = Velocity.ofWind(TrueBearing.ofDegrees(45), Speed.ofKnots(12)); // northeasterly
 * Velocity windOverWater = wind.minus(stream);
 * }</pre>
 */
@NullMarked
package org.ferryglide.nav.measure;

import org.jspecify.annotations.NullMarked;
