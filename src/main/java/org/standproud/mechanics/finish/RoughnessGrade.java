package org.standproud.mechanics.finish;

import java.util.Arrays;
import org.standproud.mechanics.OutsideValidity;

/**
 * Roughness grades N1 to N12 of ISO 1302: each named for the greatest Ra it allows. ISO
 * 21920-1:2021 has taken the place of ISO 1302, but drawings keep the grades.
 */
public enum RoughnessGrade {
  /** Ra to 0.025 um, 1 uin. */
  N1(0.025e-6),
  /** Ra to 0.05 um, 2 uin. */
  N2(0.05e-6),
  /** Ra to 0.1 um, 4 uin. */
  N3(0.1e-6),
  /** Ra to 0.2 um, 8 uin. */
  N4(0.2e-6),
  /** Ra to 0.4 um, 16 uin. */
  N5(0.4e-6),
  /** Ra to 0.8 um, 32 uin. */
  N6(0.8e-6),
  /** Ra to 1.6 um, 63 uin. */
  N7(1.6e-6),
  /** Ra to 3.2 um, 125 uin. */
  N8(3.2e-6),
  /** Ra to 6.3 um, 250 uin. */
  N9(6.3e-6),
  /** Ra to 12.5 um, 500 uin. */
  N10(12.5e-6),
  /** Ra to 25 um, 1000 uin. */
  N11(25e-6),
  /** Ra to 50 um, 2000 uin. */
  N12(50e-6);

  private final double greatestRaM;

  RoughnessGrade(double greatestRaM) {
    this.greatestRaM = greatestRaM;
  }

  /** Greatest Ra of the grade in m. */
  public double greatestRaM() {
    return greatestRaM;
  }

  /**
   * The finest grade whose limit a surface does not exceed: 7.4 um is N10, not N9.
   *
   * @param raM Ra in m, 0 to 50 um
   * @throws OutsideValidity if the surface is rougher than N12
   */
  public static RoughnessGrade of(double raM) {
    OutsideValidity.within("Ra", raM, 0, N12.greatestRaM, "m");
    return Arrays.stream(values()).filter(g -> raM <= g.greatestRaM).findFirst().orElse(N12);
  }
}
