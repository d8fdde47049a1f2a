/** The auditor's and operator's commands: verify, replay, export, backup, restore. */
@NullMarked
package org.standproud.api.audit.command;

import org.jspecify.annotations.NullMarked;
