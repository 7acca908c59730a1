package org.ferryglide.examples.command;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The script that lets a shell complete verbs and options. */
@Command(
    name = "completion",
    description = "A script that lets bash or zsh complete verbs and options.",
    footer = {
      "",
      "In bash: ferryglide completion > ~/.ferryglide; then: source ~/.ferryglide",
      "",
      "Example:",
      "  ferryglide completion"
    })
final class CompletionVerb extends Verb {
  @Override
  protected Answer answer() {
    String script = AutoComplete.bash("ferryglide", withAllVerbs());
    return new Answer().text(script).value("script", script);
  }

  private static CommandLine withAllVerbs() {
    return Ferryglide.line(Verbs.NAMES, false);
  }
}
