package org.standproud.setup;

import org.jspecify.annotations.Nullable;

/**
 * What the set-up is for, in ISA-95 words.
 *
 * @param jobOrder the job order
 * @param workMaster the work master (part and route), if the caller gives it
 * @param operation the operation of the work master, if the caller gives it
 */
public record JobReference(
    String jobOrder, @Nullable String workMaster, @Nullable String operation) {}
