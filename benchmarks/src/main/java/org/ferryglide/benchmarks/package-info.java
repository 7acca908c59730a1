/**
 * JMH runs that answer one question each, beside a general-purpose peer in the same run.
 *
 * <p>Build with {@code ./mvnw -q -pl benchmarks -am -DskipTests package}, then {@code java -jar
 * benchmarks/target/benchmarks.jar -prof gc NameOfBenchmark}.
 */
package org.ferryglide.benchmarks;
