package org.standproud.setup;

import org.jspecify.annotations.Nullable;

/**
 * The job, in ISA-95 terms.
 *
 * @param jobOrder the job order
 * @param workMaster the work master
 * @param operation operation of the work master
 */
public record JobReference(
    String jobOrder, @Nullable String workMaster, @Nullable String operation) {}
