package org.standproud.audit.records;

import java.time.Instant;
import org.standproud.audit.Asked;
import org.standproud.audit.Judged;
import org.standproud.audit.Versions;

/**
 * What a list of records shows of each.
 *
 * @param stored place and seal
 * @param time when the answer was made
 * @param asked who asked, about what
 * @param judged the answer in short
 * @param versions what the answer was made with
 */
public record RecordSummary(
    Stored stored, Instant time, Asked asked, Judged judged, Versions versions) {}
