/** Jobs of Apache Spark with the library's kernels; built and tested only with {@code -Pspark}. */
package org.ferryglide.examples.spark;
