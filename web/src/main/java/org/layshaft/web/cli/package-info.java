/** The command line. Exit status 0 is answered, 2 is bad input, 3 is our fault. */
package org.layshaft.web.cli;
