package org.layshaft.web.page;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.MustacheFactory;
import java.io.StringWriter;

/** Fills templates; whatever they show is escaped, but for drawings. Thread-safe. */
final class Templates {
    private final MustacheFactory factory = new DefaultMustacheFactory("org/layshaft/web/pages");

    String fill(String template, Object view) {
        StringWriter html = new StringWriter();
        factory.compile(template + ".mustache").execute(html, view);
        return html.toString();
    }
}
