/** Reads failure modes, words, phrases and manifests, and checks what a schema cannot. */
package org.layshaft.kb.reading;
