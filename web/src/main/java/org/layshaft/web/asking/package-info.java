/** Questions in words: from what somebody types to a question, and from the engine's findings to an answer in words. */
package org.layshaft.web.asking;
