package org.ferryglide.examples.page;

import org.ferryglide.nav.timing.Verdict;

/** Words that more than one part of the page says. */
final class Words {
  private Words() {}

  static String answer(Labels labels, Verdict verdict) {
    return labels.say(
        switch (verdict.answer()) {
          case WITHIN -> "answer.within";
          case WARNED -> "answer.warned";
          case STOPPED -> "answer.stopped";
          case NOT_CHECKED -> "answer.not-checked";
        });
  }
}
