package org.standproud.api.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.api.gate.StrangerBodies.Place;

class StrangerBodiesTest {

  private final StrangerBodies bodies = new StrangerBodies();

  @Test
  void oneAddressCannotTakeThePlacesOfOthers() {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      Place place = bodies.place("192.0.2.1");
      if (place != null) {
        places.add(place);
      }
    }
    assertThat(places).hasSize(StrangerBodies.MOST_OF_ONE);
    assertThat(bodies.place("192.0.2.2")).isNotNull();
  }

  @Test
  void allAddressesTogetherTakeAFractionOfTheServersThreads() {
    int given = 0;
    for (int i = 0; i < 200; i++) {
      given += bodies.place("192.0.2." + i) == null ? 0 : 1;
    }
    assertThat(given).isEqualTo(StrangerBodies.MOST);
  }

  @Test
  void nothingIsRememberedOfAnAddressThatLeft() {
    Place place = bodies.place("192.0.2.1");
    assertThat(bodies.addresses()).isEqualTo(1);
    assertThat(place).isNotNull();
    place.close();
    assertThat(bodies.addresses()).isZero();
    assertThat(bodies.reading()).isZero();
  }
}
