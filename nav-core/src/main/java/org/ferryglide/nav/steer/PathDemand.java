package org.ferryglide.nav.steer;

/**
 * What a path over the ground asks of the craft at its worst moments; one definition for every
 * strategy.
 *
 * <p>At each moment the craft paddles at an angle to its path, to make good what sets it sideways.
 * The share spent across is the sine of that angle. The speed to spare is how much slower it could
 * be there and then and still keep to the path without being carried back along it. What sets it is
 * the stream, and the drift down the wind. Where it holds its place all of that counts as across.
 *
 * @param crossShare greatest share of the speed through the water spent across the path, in [0, 1]
 * @param crossTime when that is, seconds since 1970
 * @param crossWaterSpeed the speed through the water there and then, metres a second
 * @param spare least speed to spare, metres a second
 * @param streamShare greatest rate of the stream as a share of the speed through the water; 0 for a
 *     craft that only drifts
 * @param streamTime when that is, seconds since 1970
 */
record PathDemand(
    double crossShare,
    double crossTime,
    double crossWaterSpeed,
    double spare,
    double streamShare,
    double streamTime) {}
