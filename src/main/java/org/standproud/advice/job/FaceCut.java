package org.standproud.advice.job;

/**
 * What comes off one face in one clamping.
 *
 * @param face the face
 * @param roughM by roughing, in m; 0 if nothing
 * @param finishM by the finishing pass, in m; 0 if it is left for another clamping
 */
record FaceCut(Face face, double roughM, double finishM) {

  FaceCut {
    if (!(roughM >= 0 && finishM >= 0 && roughM + finishM > 0)) {
      throw new IllegalArgumentException("nothing comes off " + face.words());
    }
  }

  double wholeM() {
    return roughM + finishM;
  }
}
