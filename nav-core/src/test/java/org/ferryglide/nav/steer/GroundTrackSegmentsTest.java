package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class GroundTrackSegmentsTest {
  /** A step that ends on the end of a leg to the last bit leaves such a segment. */
  @Test
  void aSegmentThatTakesNoTimeIsAPlaceLikeAnyOther() {
    TrackRecorder recorder = new TrackRecorder();
    recorder.add(0.0, 46.0, -26.0, 1e-5, 0.0, 1e-5, 0.0, 0.0);
    recorder.add(600.0, 46.006, -26.0, 1e-5, 0.0, 1e-5, 0.0, 0.0);
    GroundTrack track = recorder.finish(600.0, 46.006, -26.0, 0.0);
    List<TrackPoint> points = track.pointsEvery(300.0);
    assertEquals(46.006, points.get(points.size() - 1).position().latitudeDegrees());
    assertEquals(46.006, track.at(track.end()).latitudeDegrees());
  }
}
