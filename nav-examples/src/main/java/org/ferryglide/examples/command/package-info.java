/**
 * The command {@code ferryglide}: one verb for each question, for those who do not write Java.
 *
 * <pre>{@code
 * int status = Ferryglide.run(new String[] {"leg", "46-10.0N 26-20.0W", "46-11.8N 26-17.6W"}, out, err);
 * }</pre>
 *
 * <p>A verb is a {@link org.ferryglide.examples.command.Verb}; a new one needs its class and a line
 * in {@code Verbs}. Its exit status is a {@link org.ferryglide.examples.command.Status}: a script
 * takes 0 for yes.
 */
@NullMarked
package org.ferryglide.examples.command;

import org.jspecify.annotations.NullMarked;
