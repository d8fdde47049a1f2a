package org.standproud.audit.records;

import java.util.UUID;

/**
 * Proof that a record is on disk and in the chain.
 *
 * @param id the record's id
 * @param sequence its position in the chain, from 1
 * @param seal its seal
 */
public record Stored(UUID id, long sequence, String seal) {}
