/** Where a question is taken in and its answer handed out: what the page, the HTTP API and the command line share. */
package org.layshaft.web.desk;
