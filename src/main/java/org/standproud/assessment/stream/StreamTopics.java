package org.standproud.assessment.stream;

import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * The topics of the streaming intake and its caller.
 *
 * @param enabled whether set-ups are read from a topic; the topics must exist
 * @param setups topic of set-ups, each message the body of a request
 * @param answers topic of answers, under the key of their set-up
 * @param refused topic of set-ups that cannot be judged, unchanged, with the problem in a header
 * @param caller caller recorded for messages of the topic
 */
@ConfigurationProperties("standproud.stream")
record StreamTopics(
    boolean enabled, String setups, String answers, String refused, String caller) {}
