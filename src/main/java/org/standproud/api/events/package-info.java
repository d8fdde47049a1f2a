/** Webhook subscriptions over REST. */
@NullMarked
package org.standproud.api.events;

import org.jspecify.annotations.NullMarked;
