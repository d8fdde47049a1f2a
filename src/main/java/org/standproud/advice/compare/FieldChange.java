package org.standproud.advice.compare;

import org.standproud.advice.Quantity;
import org.standproud.setup.request.FieldPointer;

/**
 * One field that differs between two set-ups, in the caller's units.
 *
 * @param field where it stands in the request
 * @param from value before
 * @param to value after
 * @param words the change in words, such as "grip depth 8 mm to 30 mm"
 */
public record FieldChange(FieldPointer field, Quantity from, Quantity to, String words) {}
