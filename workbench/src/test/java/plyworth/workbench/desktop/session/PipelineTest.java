package plyworth.workbench.desktop.session;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import plyworth.workbench.SmallStudy;

/** The way of a study to its ranking. */
class PipelineTest {

  @Test
  void stoppedWhileCandidatesAreCountedItEndsWithoutARanking() {
    Pipeline pipeline = new Pipeline(SmallStudy.few(), (from, stage) -> {});
    pipeline.stop();
    assertThatThrownBy(() -> pipeline.run(SmallStudy.CATALOG, () -> false))
        .isInstanceOf(CancellationException.class);
  }
}
