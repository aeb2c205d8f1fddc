package org.layshaft.web.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What came of one command line. */
record Ran(int status, String out, String err) {
    static Ran with(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Layshaft.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
        return new Ran(status, out.toString(), err.toString());
    }
}
