package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class OurFaultTest {
    private final StringWriter err = new StringWriter();

    @Test
    void ourFaultIsOneSentenceAndNoTrace() {
        assertEquals(3, fail(false));
        assertEquals(1, err.toString().lines().count());
        assertTrue(err.toString().contains("--verbose"), err::toString);
        assertFalse(err.toString().contains("\tat "), err::toString);
    }

    @Test
    void theTraceComesWhenAskedFor() {
        assertEquals(3, fail(true));
        assertTrue(err.toString().contains("\tat "), err::toString);
    }

    private int fail(boolean verbose) {
        CommandLine command = new CommandLine(new Layshaft()).setErr(new PrintWriter(err, true));
        return Refusals.ofExecution(new IllegalStateException("gone"), command, verbose);
    }
}
