package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.HandleEffort;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Shelf;
import org.standproud.setup.StockSurface;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.node.ObjectNode;

/** A job is read as a set-up is: every problem at once, with its place, range and unit. */
class JobReaderTest {

  private ObjectNode request;

  @BeforeEach
  void read() throws Exception {
    request =
        (ObjectNode)
            RequestText.json(Files.readString(Path.of("seeds/jobs/01-loom-side-from-blank.json")));
    request.put("machine", "knee mill");
    part("blank").put("material", "mild steel");
    part("shelf").putArray("vises").add("6 inch vise");
    part("shelf").putArray("cutters").add("2 inch face mill, carbide").add("20 mm end mill");
  }

  private ObjectNode part(String name) {
    return (ObjectNode) request.get(name);
  }

  private MillingJob accepted() {
    JobReading reading = new JobReader(Catalogue.EMPTY).read(request);
    assertThat(reading).as(String.valueOf(reading)).isInstanceOf(JobReading.Accepted.class);
    return ((JobReading.Accepted) reading).job();
  }

  private List<Problem> refused() {
    JobReading reading = new JobReader(Catalogue.EMPTY).read(request);
    assertThat(reading).isInstanceOf(JobReading.Refused.class);
    return ((JobReading.Refused) reading).problems();
  }

  @Test
  void nothingNeedBeInACatalogue() {
    part("blank").put("surface", "bright drawn");
    MillingJob job = accepted();
    assertThat(job.shelf().cutters()).hasSize(2);
    assertThat(job.blank().surface()).isEqualTo(StockSurface.MACHINED);
    assertThat(job.blank().edges()).isEqualTo(StockSurface.SAWN);
    assertThat(job.shelf().packing()).isEqualTo(Shelf.COMMON_PACKING);
    assertThat(job.handleTorqueNm()).containsKeys(HandleEffort.FIRM, HandleEffort.HARD);
    assertThat(job.handleTorqueNm()).doesNotContainKey(HandleEffort.MALLET);
  }

  @Test
  void aFeedByHandAndALighterPullCanBeAskedFor() {
    request.put("feedDrive", "hand").put("clamping", "firm");
    MillingJob job = accepted();
    assertThat(job.feedDrive()).isEqualTo(FeedDrive.HAND);
    assertThat(job.handleTorqueNm()).doesNotContainKey(HandleEffort.HARD);
  }

  @Test
  void aFinishedSizeAboveTheBlankNamesWhatIsAllowed() {
    part("finished").put("thickness", 21);
    Problem problem = refused().get(0);
    assertThat(problem.pointer()).isEqualTo("/finished/thickness");
    assertThat(problem.value()).isEqualTo("21");
    assertThat(problem.allowed()).isEqualTo("at most 20");
    assertThat(problem.unit()).isEqualTo("mm");
  }

  @Test
  void aToleranceBelowNothingIsOutOfRange() {
    part("finished").put("heightTolerance", -0.1);
    Problem problem = refused().get(0);
    assertThat(problem.pointer()).isEqualTo("/finished/heightTolerance");
    assertThat(problem.allowed()).isEqualTo("from 0.001 to 5");
    assertThat(problem.unit()).isEqualTo("mm");
  }

  @Test
  void inInchesTheRangeIsInInches() {
    request.put("units", "inch");
    part("blank").put("length", 5).put("thickness", 0.75).put("height", 3);
    part("finished").put("length", 4.9).put("thickness", 0.8).put("height", 2.9);
    part("finished").put("lengthTolerance", 0.005).put("thicknessTolerance", 0.002);
    part("finished").put("heightTolerance", 0.004).put("roughness", 125);
    Problem problem = refused().get(0);
    assertThat(problem.allowed()).isEqualTo("at most 0.75");
    assertThat(problem.unit()).isEqualTo("in");
  }

  @Test
  void aJobThatMillsNothingIsNone() {
    part("finished").put("length", 122).put("thickness", 20).put("height", 70);
    assertThat(refused()).singleElement().extracting(Problem::pointer).isEqualTo("/finished");
  }

  @Test
  void everyProblemIsReportedAtOnce() {
    part("blank").put("material", "unobtainium").put("height", 5000);
    part("shelf").putArray("vises");
    part("shelf").put("drawer", 3);
    assertThat(refused())
        .extracting(Problem::pointer)
        .contains("/blank/material", "/blank/height", "/shelf/vises", "/shelf/drawer");
  }

  @Test
  void anEmptyCatalogueHasNoViseAndNoCutterToFallBackOn() {
    request.remove("shelf");
    assertThat(refused())
        .extracting(Problem::pointer)
        .containsExactly("/shelf/vises", "/shelf/cutters");
  }
}
