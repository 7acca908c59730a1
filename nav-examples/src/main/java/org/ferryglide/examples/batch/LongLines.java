package org.ferryglide.examples.batch;

import java.util.List;

/** Lines too long to be a row: passed on piece by piece, with empty figures at the end. */
final class LongLines {
  private LongLines() {}

  static ChunkWork.Result result(Chunk chunk, Operation operation) {
    Figures figures = new Figures(operation.adds(), false, chunk.length() + 64);
    if (chunk.kind() == Chunk.Kind.LONG_LINE) {
      if (!operation.isGrouped()) {
        figures.raw(chunk.bytes(), 0, chunk.length());
      }
      return result(figures, 0, 0, List.of());
    }
    int content = ChunkWork.withoutEnding(chunk.bytes(), 0, chunk.length());
    if (!operation.isGrouped()) {
      figures.start(chunk.bytes(), 0, content);
      figures.end(chunk.bytes(), content, chunk.length());
    }
    RefusedRow why =
        new RefusedRow(
            0, "a row must be shorter than " + ChunkReader.LONGEST_ROW + " bytes, but is longer");
    return result(
        figures, 1, content < chunk.length() ? 1 : 0, List.of(new ChunkWork.Refusal(0, why)));
  }

  private static ChunkWork.Result result(
      Figures figures, int rows, int lines, List<ChunkWork.Refusal> refusals) {
    return new ChunkWork.Result(
        figures.bytes(), figures.length(), rows, lines, refusals.size(), refusals, 0);
  }
}
