package org.ferryglide.examples.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.ferryglide.examples.page.CardSheet;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.examples.page.PageScenes;
import org.ferryglide.examples.page.PassagePage;
import org.ferryglide.examples.page.QuickestLeg;
import org.ferryglide.examples.page.QuickestPage;
import org.ferryglide.examples.page.ShoreNote;
import org.ferryglide.examples.page.WorkedPassage;
import org.ferryglide.examples.teach.Exercises;
import org.ferryglide.examples.teach.Worksheet;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Every page in a headless Chromium: on a phone of 360 by 740 points, printed on A5 and A4, looked
 * at by axe-core (WCAG rules: contrast, alternatives, headings, tables) and by the Nu HTML checker.
 * The pictures and PDFs stay in target/browser, to be looked at by people.
 */
class PagesInBrowserTest {
  private static final Path OUT = Path.of("target", "browser");
  private static final int PHONE_WIDE = 360;
  private static final int PHONE_HIGH = 740;

  /** Millimetres of a CSS point: 96 to an inch. */
  private static final String MILLIMETRES = "*25.4/96";

  private static final Map<String, Path> PAGES = new LinkedHashMap<>();
  private static Chromium chromium;

  @BeforeAll
  static void writePages() throws Exception {
    Files.createDirectories(OUT);
    WorkedPassage folder =
        WorkedPassage.of(PassageFolder.read(Path.of("scenarios", "ollen-skerries"))).withWayHome();
    write("ollen-skerries", folder);
    for (Map.Entry<String, WorkedPassage> scene : PageScenes.all().entrySet()) {
      write(scene.getKey(), scene.getValue());
    }
    QuickestLeg leg =
        QuickestLeg.of(folder.passage(), folder.departure(), 3, Duration.ofMinutes(15), 2)
            .orElseThrow();
    add("quickest", QuickestPage.of(leg, leg.planned(), Units.NAUTICAL, Labels.english()).html());
    Worksheet sheet = Worksheet.of(Exercises.of(7, 29));
    add("worksheet", sheet.questions());
    add("worksheet-answers", sheet.answers());
    chromium = Chromium.start();
  }

  @AfterAll
  static void close() throws Exception {
    if (chromium != null) {
      chromium.close();
    }
  }

  private static void write(String name, WorkedPassage worked) throws Exception {
    add(name, PassagePage.of(worked).html());
    add(name + "-shore", ShoreNote.of(worked).html());
    CardSheet.of(worked).ifPresent(sheet -> add(name + "-cards", sheet.html()));
  }

  private static void add(String name, String html) {
    try {
      Path file = OUT.resolve(name + ".html").toAbsolutePath();
      Files.writeString(file, html);
      PAGES.put(name, file);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void nothingIsWiderThanAPhone() throws Exception {
    for (Map.Entry<String, Path> page : PAGES.entrySet()) {
      chromium.show(page.getValue(), PHONE_WIDE, PHONE_HIGH);
      Files.write(OUT.resolve(page.getKey() + "-phone.png"), chromium.picture(false));
      Files.write(OUT.resolve(page.getKey() + "-phone-whole.png"), chromium.picture(true));
      assertEquals(
          PHONE_WIDE,
          Integer.parseInt(chromium.value("document.documentElement.scrollWidth")),
          page.getKey());
    }
  }

  @Test
  void everyPagePrintsOnA5AndA4() throws Exception {
    for (Map.Entry<String, Path> page : PAGES.entrySet()) {
      chromium.show(page.getValue(), PHONE_WIDE, PHONE_HIGH);
      Files.write(OUT.resolve(page.getKey() + "-a5.pdf"), pdf(148, 210));
      Files.write(OUT.resolve(page.getKey() + "-a4.pdf"), pdf(210, 297));
    }
  }

  private static byte[] pdf(double wide, double high) throws Exception {
    byte[] pdf = chromium.pdf(wide, high);
    assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
    return pdf;
  }

  /** As wide as the paper less its margins, with the rules of print. */
  @Test
  void nothingIsWiderThanItsPaper() throws Exception {
    for (Map.Entry<String, Path> page : PAGES.entrySet()) {
      if (page.getKey().endsWith("-cards")) {
        continue;
      }
      for (int millimetres : new int[] {148 - 18, 210 - 18}) {
        int wide = (int) Math.floor(millimetres / 25.4 * 96);
        chromium.show(page.getValue(), wide, 1000);
        chromium.printed(true);
        int needed = Integer.parseInt(chromium.value("document.documentElement.scrollWidth"));
        Files.write(
            OUT.resolve(page.getKey() + "-" + millimetres + "mm.png"), chromium.picture(true));
        chromium.printed(false);
        assertTrue(needed <= wide, page.getKey() + " needs " + needed + " of " + wide);
      }
    }
  }

  @Test
  void axeFindsNothing() throws Exception {
    String axe;
    try (InputStream in = PagesInBrowserTest.class.getResourceAsStream("/axe.min.js")) {
      axe = new String(Objects.requireNonNull(in, "axe").readAllBytes(), StandardCharsets.UTF_8);
    }
    for (Map.Entry<String, Path> page : PAGES.entrySet()) {
      chromium.show(page.getValue(), PHONE_WIDE, PHONE_HIGH);
      chromium.run(axe);
      String found =
          chromium.value(
              "axe.run().then(r=>r.violations.map(v=>v.id+': '+v.help+' '"
                  + "+v.nodes.slice(0,3).map(n=>n.html.slice(0,120)).join(' | ')).join('\\n'))");
      assertEquals("", found, page.getKey());
    }
  }

  @Test
  void theCheckerOfHtmlFindsNothing() throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add("nu.validator.client.SimpleCommandLineValidator");
    command.add("--errors-only");
    PAGES.values().forEach(page -> command.add(page.toString()));
    Path found = OUT.resolve("checker.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(found.toFile())
            .start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "the checker did not end");
    assertEquals(
        List.of(),
        Files.readAllLines(found).stream().filter(line -> line.contains("error")).toList());
    assertEquals(0, process.exitValue());
  }

  @Test
  void headingsOfCardsAreTenMillimetresHighAndFiguresFive() throws Exception {
    chromium.show(PAGES.get("ollen-skerries-cards"), 1200, 900);
    String height =
        "(s=>{let e=document.querySelector(s),c=document.createElement('canvas').getContext('2d');"
            + "let y=getComputedStyle(e);c.font=y.fontWeight+' '+y.fontSize+' '+y.fontFamily;"
            + "let d=Infinity;for(let f of '0123456789'){"
            + "let m=c.measureText(f);d=Math.min(d,m.actualBoundingBoxAscent"
            + "+m.actualBoundingBoxDescent)}return d"
            + MILLIMETRES
            + "})";
    double heading = Double.parseDouble(chromium.value(height + "('.afloat .heading')"));
    double figures = Double.parseDouble(chromium.value(height + "('.afloat .side')"));
    assertTrue(heading >= 10.0, "headings are " + heading + " mm high");
    assertTrue(figures >= 5.0, "figures are " + figures + " mm high");
  }

  @Test
  void noSideOfACardIsCut() throws Exception {
    for (Map.Entry<String, Path> page : PAGES.entrySet()) {
      if (page.getKey().endsWith("-cards")) {
        chromium.show(page.getValue(), 1200, 900);
        String cut =
            chromium.value(
                "[...document.querySelectorAll('.side')].filter(e=>e.scrollHeight>e.clientHeight"
                    + "||e.scrollWidth>e.clientWidth).map(e=>e.textContent).join('\\n--\\n')");
        assertEquals("", cut, page.getKey());
      }
    }
  }

  /**
   * A line of the tables, of the plotting sheet or of a drawing that runs off the paper is lost.
   */
  @Test
  void nothingOfAWorksheetRunsOffA4() throws Exception {
    int wide = (int) Math.floor((210 - 28) / 25.4 * 96);
    for (String name : List.of("worksheet", "worksheet-answers")) {
      chromium.show(PAGES.get(name), wide, 1000);
      chromium.printed(true);
      String beyond =
          chromium.value(
              "[...document.querySelectorAll('table,svg,p,ol,ul,h2')].filter(e=>{"
                  + "let r=e.getBoundingClientRect();return r.left<0||r.right>innerWidth+1})"
                  + ".map(e=>e.tagName+' '+e.textContent.slice(0,40)).join('; ')");
      chromium.printed(false);
      assertEquals("", beyond, name);
    }
  }

  /** The tables stand on the first page, and the sheet to lay off on begins the second. */
  @Test
  void theTablesOfAWorksheetFitOnePage() throws Exception {
    int wide = (int) Math.floor((210 - 28) / 25.4 * 96);
    double high = (297 - 28) / 25.4 * 96;
    chromium.show(PAGES.get("worksheet"), wide, 1000);
    chromium.printed(true);
    double tables =
        Double.parseDouble(
            chromium.value("document.querySelector('.tables').getBoundingClientRect().bottom"));
    double sheet =
        Double.parseDouble(
            chromium.value("document.querySelector('.sheet').getBoundingClientRect().height"));
    chromium.printed(false);
    assertTrue(tables <= high, "tables end at " + tables + " of " + high);
    assertTrue(sheet <= high, "sheet is " + sheet + " of " + high + " high");
  }
}
