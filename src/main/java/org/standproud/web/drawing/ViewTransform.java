package org.standproud.web.drawing;

/**
 * Maps a view of the set-up onto paper: metres to user units, the second axis upward.
 *
 * @param originX where zero of the first axis lies on paper
 * @param originY where zero of the second axis lies on paper
 * @param perM user units to a metre, the same along both axes
 */
record ViewTransform(double originX, double originY, double perM) {

  double x(double metres) {
    return originX + metres * perM;
  }

  double y(double metres) {
    return originY - metres * perM;
  }

  double size(double metres) {
    return metres * perM;
  }
}
