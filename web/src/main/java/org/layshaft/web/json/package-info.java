/**
 * Answers as JSON: one record for each object that goes out, its components in the order in which they are written.
 *
 * <p>The command line and the HTTP API write the same records. A thing that is missing is null or an empty list, and is
 * never left out. The shape of an answer is published as {@code answer.schema.json}.
 */
package org.layshaft.web.json;
