package org.standproud.audit;

import org.standproud.audit.canonical.CanonicalJson;

/**
 * The full answer with its inputs, part by part.
 *
 * @param request the request as sent
 * @param setup the set-up with names resolved by the catalogue
 * @param evidence the computed evidence
 * @param trace every card, fired or not, with its conditions
 * @param answer the answer as sent
 */
public record RecordPayload(
    CanonicalJson request,
    CanonicalJson setup,
    CanonicalJson evidence,
    CanonicalJson trace,
    CanonicalJson answer) {}
