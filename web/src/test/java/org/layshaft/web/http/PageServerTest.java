package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import org.junit.jupiter.api.Test;
import org.layshaft.web.Demo;
import org.layshaft.web.desk.BadInputException;

class PageServerTest {
    @Test
    void aTakenPortIsSaidWithWhatToDo() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            int port = taken.getLocalPort();
            BadInputException refused =
                    assertThrows(BadInputException.class, () -> PageServer.start(port, Demo.desk()));
            assertTrue(refused.getMessage().startsWith("Port %d is taken".formatted(port)), refused.getMessage());
            assertTrue(refused.getMessage().contains("serve --port "), refused.getMessage());
        }
    }

    @Test
    void aPortBeyondThoseThereAreIsRefused() {
        BadInputException refused = assertThrows(BadInputException.class, () -> PageServer.start(70_000, Demo.desk()));
        assertEquals("There is no port 70000. Give one from 0 to 65535.", refused.getMessage());
    }
}
