/** From a layout as typed to its parts: those typed, and those that the format supplies. */
package org.layshaft.kb.parts;
