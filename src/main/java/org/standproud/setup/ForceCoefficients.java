package org.standproud.setup;

/**
 * What the cutting force is worked out from. The published sets are named by stock, tool and the
 * number of the paper which the table they were read in cites for them.
 */
public enum ForceCoefficients implements Worded {
  /** Kienzle's law with the specific cutting force and the chip exponent of the material. */
  KIENZLE("kienzle"),
  /** Al 6082-T6, carbide, cited paper 189. */
  AL_6082_T6_CARBIDE_189("al 6082-t6 with carbide, set 189"),
  /** Al 7075-T6, carbide, cited paper 190. */
  AL_7075_T6_CARBIDE_190("al 7075-t6 with carbide, set 190"),
  /** Al 6061-T6, carbide, cited paper 160. */
  AL_6061_T6_CARBIDE_160("al 6061-t6 with carbide, set 160"),
  /** Al 7075-T6, carbide, cited paper 160. */
  AL_7075_T6_CARBIDE_160("al 7075-t6 with carbide, set 160"),
  /** Al 7075, high-speed steel, cited paper 156. */
  AL_7075_HSS_156("al 7075 with hss, set 156"),
  /** Al 7075, carbide, cited paper 47. */
  AL_7075_CARBIDE_47("al 7075 with carbide, set 47");

  private final String words;

  ForceCoefficients(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
