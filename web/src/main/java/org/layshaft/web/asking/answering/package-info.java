/** From a question to its answer in words: one composer for each intent, every sentence computed from what follows. */
package org.layshaft.web.asking.answering;
