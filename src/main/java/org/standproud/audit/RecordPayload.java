package org.standproud.audit;

import org.standproud.audit.canonical.CanonicalJson;

/**
 * The whole of an answer and what it stood on, part by part.
 *
 * @param request what the caller sent
 * @param setup the set-up after names were resolved against the catalogue
 * @param evidence the numbers computed from it
 * @param trace every card, fired or not, with its conditions
 * @param answer what was sent back
 */
public record RecordPayload(
    CanonicalJson request,
    CanonicalJson setup,
    CanonicalJson evidence,
    CanonicalJson trace,
    CanonicalJson answer) {}
