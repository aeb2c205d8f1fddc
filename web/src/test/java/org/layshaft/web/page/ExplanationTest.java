package org.layshaft.web.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ExplanationTest {
    @Test
    void headingsParagraphsItemsAndStrongWords() {
        assertEquals(
                "<h1>Hand</h1>\n<p>Two <strong>left</strong> hands do not mesh.</p>\n<ul>\n<li>one more</li>\n<li>two</li>\n</ul>\n",
                Explanation.html("# Hand\n\nTwo **left** hands\ndo not mesh.\n\n- one\n  more\n- two\n"));
    }

    @Test
    void allElseIsText() {
        assertEquals("<p>&lt;b&gt; &amp; <code>a &lt; b</code> 2 * 3</p>\n", Explanation.html("<b> & `a < b` 2 * 3"));
    }
}
