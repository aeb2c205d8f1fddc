/** Reading JSON as a person types it, keeping for every value the line it stands on. */
package org.layshaft.kb.json;
