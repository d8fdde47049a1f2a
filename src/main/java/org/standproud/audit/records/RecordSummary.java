package org.standproud.audit.records;

import java.time.Instant;
import org.standproud.audit.Asked;
import org.standproud.audit.Judged;
import org.standproud.audit.Versions;

/**
 * What a list shows of a record.
 *
 * @param stored position and seal
 * @param time time of the answer
 * @param asked caller and job
 * @param judged verdict and score
 * @param versions the versions that produced it
 */
public record RecordSummary(
    Stored stored, Instant time, Asked asked, Judged judged, Versions versions) {}
