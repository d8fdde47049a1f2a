package org.standproud.mechanics.holding.contact;

/**
 * One flat face pressed by a force and turned against an elastic layer that cannot pull (Winkler
 * layer, unilateral).
 *
 * <p>Formula, with {@code k} layer stiffness, {@code L} length, {@code g} height, {@code F} force
 * and {@code q} turn: while {@code k L q g^2/2 <= F} the whole height bears and the resultant
 * stands {@code k L q g^3/(12 F)} from the middle; beyond that only {@code c = sqrt(2F/(k L q))}
 * bears, with the resultant {@code c/3} from the heavy edge. Own model, from statics; linear in the
 * layer.
 *
 * @param layerPaPerM k in Pa/m
 * @param lengthM L in m
 * @param heightM g in m
 */
record FaceContact(double layerPaPerM, double lengthM, double heightM) {

  /** Turning stiffness in N m/rad while the whole height bears. */
  double turningNmPerRad() {
    return layerPaPerM * lengthM * heightM * heightM * heightM / 12;
  }

  /** Turning stiffness in N m/rad at a turn under a force in N. */
  double turningNmPerRad(double forceN, double turnRad) {
    double turn = Math.abs(turnRad);
    return turn <= partingTurnRad(forceN)
        ? turningNmPerRad()
        : forceN * contactHeightM(forceN, turn) / (6 * turn);
  }

  /** Turn in rad at which the light edge lets go under a force in N. */
  double partingTurnRad(double forceN) {
    return 2 * forceN / (layerPaPerM * lengthM * heightM * heightM);
  }

  /** Height in m that bears, whichever way the face is turned. */
  double contactHeightM(double forceN, double turnRad) {
    double turn = Math.abs(turnRad);
    return turn <= partingTurnRad(forceN)
        ? heightM
        : Math.sqrt(2 * forceN / (layerPaPerM * lengthM * turn));
  }

  /** Distance in m of the resultant from the middle, toward the edge that a positive turn loads. */
  double offsetM(double forceN, double turnRad) {
    double turn = Math.abs(turnRad);
    double offset =
        turn <= partingTurnRad(forceN)
            ? layerPaPerM * lengthM * turn * heightM * heightM * heightM / (12 * forceN)
            : heightM / 2 - contactHeightM(forceN, turn) / 3;
    return Math.copySign(offset, turnRad);
  }

  /** Pressure in Pa at the heavy edge. */
  double peakPressurePa(double forceN, double turnRad) {
    double contact = contactHeightM(forceN, turnRad);
    return contact < heightM
        ? 2 * forceN / (contact * lengthM)
        : forceN / (heightM * lengthM) + layerPaPerM * Math.abs(turnRad) * heightM / 2;
  }
}
