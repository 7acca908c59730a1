package org.ferryglide.benchmarks;

import org.openjdk.jmh.annotations.Fork;

/**
 * What every benchmark extends, so as to run once in the same heap: small, of fixed size, touched
 * beforehand, collected by the plainest collector.
 *
 * <p>A heap that may grow hands out pages nobody has touched yet, and on a virtual machine the
 * first touch of a page can cost more than all the objects on it: there whatever allocates seemed
 * five to ten times slower than it is, in proportion to its bytes. The young generation has the
 * size of a cache, so that new objects lie where the last ones did.
 */
@Fork(
    value = 1,
    jvmArgsAppend = {"-Xms192m", "-Xmx192m", "-Xmn24m", "-XX:+AlwaysPreTouch", "-XX:+UseSerialGC"})
public abstract class InFixedHeap {}
