/** The page and the API over HTTP, to this machine alone. */
package org.layshaft.web.http;
