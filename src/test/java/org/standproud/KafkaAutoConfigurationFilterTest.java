package org.standproud;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.boot.autoconfigure.AutoConfiguration;
import org.springframework.boot.autoconfigure.AutoConfigurationMetadata;
import org.springframework.boot.context.annotation.ImportCandidates;
import org.springframework.mock.env.MockEnvironment;

class KafkaAutoConfigurationFilterTest {

  private static final List<String> ALL =
      ImportCandidates.load(
              AutoConfiguration.class, KafkaAutoConfigurationFilterTest.class.getClassLoader())
          .getCandidates();

  private static List<String> leftOut(String stream) {
    KafkaAutoConfigurationFilter filter = new KafkaAutoConfigurationFilter();
    filter.setEnvironment(new MockEnvironment().withProperty("standproud.stream.enabled", stream));
    AutoConfigurationMetadata none = null;
    boolean[] kept = filter.match(ALL.toArray(String[]::new), none);
    return IntStream.range(0, kept.length).filter(i -> !kept[i]).mapToObj(ALL::get).toList();
  }

  @Test
  void theBrokersSideIsPutTogetherOnlyWhereATopicIsRead() {
    assertThat(leftOut("false")).isNotEmpty().allMatch(name -> name.contains(".kafka."));
    assertThat(leftOut("true")).isEmpty();
  }

  @Test
  void whatIsLeftOutByOthersAlreadyIsPassedOver() {
    boolean[] kept =
        new KafkaAutoConfigurationFilter().match(new String[] {null, "some.Other"}, null);
    assertThat(Arrays.toString(kept)).isEqualTo("[true, true]");
  }
}
