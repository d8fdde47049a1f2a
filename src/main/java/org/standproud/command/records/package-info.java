/** Commands for auditors and operators: verify, replay, export, backup, restore. */
@NullMarked
package org.standproud.command.records;

import org.jspecify.annotations.NullMarked;
