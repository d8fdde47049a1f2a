/** Published values set against computed ones, and the page of the mechanics made from them. */
package org.standproud.mechanics.published;
