/**
 * From a request, JSON or YAML, to a checked set-up in SI units, or to the list of everything that
 * is wrong with it. Each field is described once; that description reads, checks, writes and
 * documents it.
 */
@NullMarked
package org.standproud.setup.request;

import org.jspecify.annotations.NullMarked;
