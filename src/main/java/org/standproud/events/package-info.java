/** Tells shop systems what happened: CloudEvents, signed, from an outbox that loses nothing. */
@NullMarked
package org.standproud.events;

import org.jspecify.annotations.NullMarked;
