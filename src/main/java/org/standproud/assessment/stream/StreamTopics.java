package org.standproud.assessment.stream;

import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * The topics of the streaming intake and whose work it is.
 *
 * @param enabled whether set-ups are taken from a topic; the topics have to exist
 * @param setups where set-ups arrive, each a message as the body of a request would be
 * @param answers where answers go, under the key of their set-up
 * @param refused where set-ups go that cannot be judged, as they came, with the problem as a header
 * @param caller who is put down as the caller of what comes from the topic
 */
@ConfigurationProperties("standproud.stream")
record StreamTopics(
    boolean enabled, String setups, String answers, String refused, String caller) {}
