package org.ferryglide.examples.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CostPicturesTest {
  @Test
  void eachCurveBecomesAPictureWithAllItsSeries(@TempDir Path folder) throws IOException {
    Files.writeString(
        folder.resolve("curves.csv"),
        "curve,series,of,axis,value,ns,ns_each\n"
            + "coast,stationCount,10,coastPoints,0,100.0,100.0\n"
            + "coast,stationCount,10,coastPoints,10000,1000.0,1000.0\n"
            + "coast,stationCount,40,coastPoints,0,400.0,400.0\n"
            + "legs,cores,1,legs,1000,90000.0,90.0\n");
    CostPictures.draw(folder);
    String coast = Files.readString(folder.resolve("coast.svg"));
    assertTrue(coast.contains("10 stations") && coast.contains("40 stations"));
    // 100 ns lies at the foot (262), 1000 ns a power of ten higher: at the top (24), from 48 to 300
    assertTrue(coast.contains("48,262 300,24"), coast);
    String legs = Files.readString(folder.resolve("legs.svg"));
    assertTrue(legs.contains("Cost by legs and cores, microseconds") && legs.contains("1 core<"));
    assertTrue(Files.size(folder.resolve("legs.png")) > 1000);
  }

  @Test
  void anotherHeadingIsRefusedByName(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("curves.csv"), "a,b\n");
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> CostPictures.draw(folder));
    assertEquals(
        "curves.csv must begin with curve,series,of,axis,value,ns,ns_each", refused.getMessage());
  }
}
