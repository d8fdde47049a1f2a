/** The auditor's and operator's commands: verify, replay, export, backup, restore. */
@NullMarked
package org.standproud.command.records;

import org.jspecify.annotations.NullMarked;
