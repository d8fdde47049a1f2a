/** Webhook events for shop systems: signed CloudEvents from a transactional outbox. */
@NullMarked
package org.standproud.events;

import org.jspecify.annotations.NullMarked;
