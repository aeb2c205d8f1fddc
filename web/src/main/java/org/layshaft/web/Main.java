package org.layshaft.web;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.layshaft.web.cli.Layshaft;

/** Starts the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(Layshaft.run(out, err, args));
    }
}
