package org.layshaft.web.page;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.web.Demo;
import org.layshaft.web.desk.BadInputException;

/** What somebody types comes back as text and never as markup. */
class EscapingTest {
    private static final Pages PAGES = new Pages(Demo.desk());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "which gears work if the <b>3-4 fork</b> is bent",
                "' onfocus='alert(1)",
                "{{> page}} {{{svg}}}",
                "</title><script>alert(1)</script>"
            })
    void questionsStayText(String hostile) {
        String page = PAGES.page(Address.of("curlew").asking(hostile));

        assertFalse(page.contains("<script>"), page);
        assertFalse(page.contains("<img"), page);
        assertFalse(page.contains("<b>"), page);
        assertFalse(page.contains("\"><img"), page);
        assertFalse(page.contains("' onfocus"), page);
        assertTrue(page.contains("<input id=\"q\""), page);
    }

    @Test
    void hostilePartsAndLayoutsAreRefusedAsText() {
        String hostile = "<svg onload=alert(1)>";
        BadInputException refused = assertThrows(
                BadInputException.class, () -> PAGES.page(Address.of("curlew").at(hostile)));
        String page = PAGES.refusal("Not known", refused.getMessage(), List.of(hostile));

        assertFalse(page.contains("<svg"), page);
        assertTrue(page.contains("&lt;svg onload"), page);
    }
}
