package org.standproud.advice.job;

import org.standproud.setup.Stage;

/**
 * One pass as it is to be judged.
 *
 * @param pass the judged set-up
 * @param stage rough or finish
 * @param takesM what it takes off the face, in m
 * @param part which strip or half of the face it mills, from 1
 * @param parts into how many strips or halves the face is divided
 */
record PassDraft(JudgedPass pass, Stage stage, double takesM, int part, int parts) {}
