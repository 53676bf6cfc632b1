package plyworth.shared.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.material.Material;
import plyworth.shared.route.Process;
import plyworth.shared.study.Study;

class StudyRoundTripTest {

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatIsWrittenIsReadBackEqual(long seed) {
    Study whole = StudyFile.selfContained(SampleStudies.of(seed));
    Study read = StudyFile.read(StudyFile.write(whole), "x.study.json");
    assertThat(Objects.equals(read, whole)).isTrue();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatWasWrittenIsWrittenAgainByteForByte(long seed) {
    String text = StudyFile.write(SampleStudies.of(seed));
    assertThat(StudyFile.write(StudyFile.read(text, "x.study.json"))).isEqualTo(text);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void fileBeginsWithItsSchemaAndEndsWithALineFeed(long seed) {
    String text = StudyFile.write(SampleStudies.of(seed));
    assertThat(text.startsWith("{\n  \"schema\": " + Migrations.CURRENT + ",\n")).isTrue();
    assertThat(text.endsWith("}\n")).isTrue();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void selfContainedStudyCarriesWhatItUsesOnce(long seed) {
    Study whole = StudyFile.selfContained(SampleStudies.of(seed));
    assertThat(whole.materials().stream().map(Material::id)).isSorted().doesNotHaveDuplicates();
    assertThat(whole.processes().stream().map(Process::id)).contains("slitting").isSorted();
    assertThat(whole.baseline().layers())
        .allSatisfy(l -> assertThat(whole.materials()).anyMatch(m -> m.id().equals(l.material())));
    assertThat(Objects.equals(StudyFile.selfContained(whole), whole)).isTrue();
  }
}
