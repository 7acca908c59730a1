package org.ferryglide.examples.batch;

import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/** Cuts a stream of rows only where the first column read changes. */
final class GroupCut implements ChunkReader.Cut {
  private final String source;
  private final Row row;

  GroupCut(String source, Heading heading) {
    this.source = source;
    this.row = new Row(heading);
  }

  @Override
  public int last(byte[] bytes, int filled) {
    int cut = 0;
    byte[] group = null;
    int start = 0;
    int end = RowEnds.after(bytes, 0, filled);
    while (end > 0) {
      int content = ChunkWork.withoutEnding(bytes, start, end);
      try {
        row.moveTo(bytes, start, content);
        if (group == null || !row.isSame(0, group)) {
          group = row.copy(0);
          cut = start;
        }
      } catch (RefusedRow broken) {
        // which group it belongs to is not known; it stays with the one before
      }
      start = end;
      end = RowEnds.after(bytes, start, filled);
    }
    if (cut == 0 && filled >= ChunkReader.LONGEST_ROW && start > 0) {
      throw new InputFormatException(
          new InputProblem(
              source,
              0,
              0,
              "the rows of one id must together be shorter than "
                  + ChunkReader.LONGEST_ROW
                  + " bytes, but those of "
                  + (group == null ? "a broken one" : row.text(0))
                  + " are longer"));
    }
    return cut;
  }
}
